package fencerow.content;

import java.util.Collection;
import java.util.Comparator;
import java.util.Optional;

/** Finds the known word that a mistyped one was probably meant to be. */
final class Nearest {
    private Nearest() {}

    /** The word with the fewest slips away; empty if none is near. */
    static Optional<String> of(String typed, Collection<String> known) {
        int most = Math.max(1, Math.min(4, typed.length() / 3));
        return known.stream()
                .filter(word -> Math.abs(word.length() - typed.length()) <= most)
                .filter(word -> slips(typed, word) <= most)
                .min(Comparator.<String>comparingInt(word -> slips(typed, word)).thenComparing(word -> word));
    }

    /** Advice on what to write instead; what else to do where no word is near. */
    static String advice(String typed, Collection<String> known, String otherwise) {
        return of(typed, known).map(near -> "did you mean [" + near + "]?").orElse(otherwise);
    }

    /**
     * Letters left out, put in, exchanged or swapped with their neighbour: the optimal string alignment distance,
     * G. Navarro, A guided tour to approximate string matching, ACM Computing Surveys 33(1), 2001.
     */
    private static int slips(String a, String b) {
        int[] beforeLast = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int same = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], last[j]) + 1, last[j - 1] + same);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], beforeLast[j - 2] + 1);
                }
            }
            int[] spare = beforeLast;
            beforeLast = last;
            last = row;
            row = spare;
        }
        return last[b.length()];
    }
}
