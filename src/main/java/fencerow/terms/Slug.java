package fencerow.terms;

import java.util.regex.Pattern;

/** The one rule for how ids are spelt: lower-case ASCII words joined by hyphens, as in {@code rear-remotes}. */
final class Slug {
    private static final Pattern SPELLING = Pattern.compile("[a-z0-9]+(-[a-z0-9]+)*");

    private Slug() {}

    /**
     * Returns {@code value} unchanged.
     *
     * @throws IllegalArgumentException if it is not a slug of at most 60 characters
     */
    static String require(String what, String value) {
        if (value.length() > 60 || !SPELLING.matcher(value).matches()) {
            throw new IllegalArgumentException(what + " [" + value + "] is not an id; "
                    + "use lower-case letters, digits and single hyphens, at most 60 characters");
        }
        return value;
    }
}
