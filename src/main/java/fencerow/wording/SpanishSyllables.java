package fencerow.wording;

import java.util.regex.Pattern;

/**
 * Counts the syllables of Spanish words by the rules of their spelling: two strong vowels, or a strong one beside a
 * weak one that has an accent, are spoken apart; all other vowels side by side are one syllable. An h between them
 * changes nothing. (Real Academia Espanola, Ortografia de la lengua espanola, 2010: diphthongs, triphthongs, hiatus.)
 */
final class SpanishSyllables {
    private static final Pattern SILENT_U = Pattern.compile("(?<=[gq])u(?=[ei\u00e9\u00ed])");
    private static final Pattern H = Pattern.compile("(?<=[aeiou\u00e1\u00e9\u00ed\u00f3\u00fa\u00fc])h");
    private static final Pattern VOWEL_Y = Pattern.compile("y(?![aeiou\u00e1\u00e9\u00ed\u00f3\u00fa])");
    private static final String STRONG = "aeo\u00e1\u00e9\u00f3";
    private static final String WEAK = "iu\u00fc";
    private static final String WEAK_WITH_ACCENT = "\u00ed\u00fa";

    private SpanishSyllables() {}

    /** How many the word has, in lower case; at least one. */
    static int count(String word) {
        String spoken = SILENT_U.matcher(word).replaceAll("");
        spoken = VOWEL_Y.matcher(H.matcher(spoken).replaceAll("")).replaceAll("i");
        int count = 0;
        char before = ' ';
        for (int i = 0; i < spoken.length(); i++) {
            char c = spoken.charAt(i);
            boolean vowel = isOneOf(c, STRONG) || isOneOf(c, WEAK) || isOneOf(c, WEAK_WITH_ACCENT);
            if (vowel && isApart(before, c)) {
                count++;
            }
            before = c;
        }
        return Math.max(1, count);
    }

    /** Whether a vowel starts a syllable of its own after what stands before it. */
    private static boolean isApart(char before, char vowel) {
        boolean strongBefore = isOneOf(before, STRONG);
        boolean strong = isOneOf(vowel, STRONG);
        if (isOneOf(before, WEAK)) {
            return before == vowel;
        }
        if (isOneOf(before, WEAK_WITH_ACCENT)) {
            return strong || before == vowel;
        }
        return !strongBefore || strong || isOneOf(vowel, WEAK_WITH_ACCENT);
    }

    private static boolean isOneOf(char c, String letters) {
        return letters.indexOf(c) >= 0;
    }
}
