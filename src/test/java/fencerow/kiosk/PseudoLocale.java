package fencerow.kiosk;

import fencerow.wording.Texts;
import java.util.HashMap;
import java.util.Map;

/**
 * A language that nobody speaks: English with marks on its letters and about 40 % longer, the room that translations
 * need. Shows words that do not come from the content, and places without room.
 */
final class PseudoLocale {
    static final String TAG = "en-XA";

    private static final String PLAIN = "aeiouncAEIOUNC";
    private static final String MARKED =
            "\u00e1\u00e9\u00ed\u00f3\u00fa\u00f1\u00e7\u00c1\u00c9\u00cd\u00d3\u00da\u00d1\u00c7";

    private PseudoLocale() {}

    static Texts of(Texts texts) {
        Map<String, String> patterns = new HashMap<>();
        texts.keys().forEach(key -> patterns.put(key, lengthened(texts.get(key))));
        return new Texts(TAG, patterns);
    }

    /** Longer by doubling the vowel of every second word; what stands in braces stays, but for plural branches. */
    static String lengthened(String pattern) {
        StringBuilder out = new StringBuilder();
        int depth = 0;
        boolean selector = false;
        int letters = 0;
        for (int i = 0; i < pattern.length(); i++) {
            char c = pattern.charAt(i);
            if (c == '{') {
                depth++;
            } else if (c == '}') {
                depth--;
            }
            // Odd depths hold argument names and selectors, even ones hold words.
            selector = depth % 2 == 1;
            int at = PLAIN.indexOf(c);
            if (selector || at < 0) {
                out.append(c);
            } else {
                letters++;
                out.append(MARKED.charAt(at));
                if (letters % 5 != 0 && at < PLAIN.length() / 2) {
                    out.append(MARKED.charAt(at));
                }
            }
        }
        return out.toString();
    }
}
