package fencerow.desk;

/**
 * A check character by the hybrid system of ISO/IEC 7064 (MOD M+1,M) over an alphabet of M characters. The standard
 * names it for 10, 26 and 36 characters; the rule is the same for any even number. Every single wrong character is
 * noticed, since each step takes different characters to different values, and doubling modulo an odd number loses
 * nothing.
 *
 * @param alphabet every character once, in the order of their values from 0
 */
record CheckCharacter(String alphabet) {
    /** @throws IllegalArgumentException if the alphabet's length is odd, or it is empty */
    CheckCharacter {
        if (alphabet.isEmpty() || alphabet.length() % 2 != 0) {
            throw new IllegalArgumentException("an alphabet of " + alphabet.length()
                    + " characters has no such check character; give an even number");
        }
    }

    /**
     * The character to put at the end.
     *
     * @throws IllegalArgumentException if the text has a character outside the alphabet
     */
    char of(String text) {
        return alphabet.charAt((size() + 1 - state(text)) % size());
    }

    /** Whether the last character is the check character of those before it; all must be of the alphabet. */
    boolean holds(String text) {
        int last = text.length() - 1;
        return last > 0 && text.chars().allMatch(each -> alphabet.indexOf(each) >= 0)
                && of(text.substring(0, last)) == text.charAt(last);
    }

    private int size() {
        return alphabet.length();
    }

    private int state(String text) {
        int state = size();
        for (int i = 0; i < text.length(); i++) {
            int value = alphabet.indexOf(text.charAt(i));
            if (value < 0) {
                throw new IllegalArgumentException(
                        "[" + text.charAt(i) + "] is none of the characters " + alphabet + "; use these only");
            }
            int sum = (state + value) % size();
            state = (sum == 0 ? size() : sum) * 2 % (size() + 1);
        }
        return state;
    }
}
