package fencerow.backoffice.document;

import java.util.Locale;

/** How constants are written in documents where they have no word of their own. */
final class Words {
    private Words() {}

    /** Lower case, words joined by hyphens. */
    static String id(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', '-');
    }
}
