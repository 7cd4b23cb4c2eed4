package fencerow.search;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import org.apache.lucene.index.IndexReader;
import org.apache.lucene.index.MultiTerms;
import org.apache.lucene.index.TermsEnum;

/** All words as written in titles, names and text, for finding those that a misspelt one may have meant. */
final class Vocabulary {
    private static final int MOST = 30;

    /** Words of letters alone, by length: what has a digit in it is a code, and no misspelt word means one. */
    private final List<Known> words;
    /** For each of those a bit for each letter in it: words with unlike letters need no closer look. */
    private final int[] letters;
    /** Where the words of each length begin among those; at the end how many there are. */
    private final int[] ofLength;
    private final Map<String, Known> byWord = new HashMap<>();

    /**
     * A word of the index.
     *
     * @param called in how many titles or names it is
     * @param shown  in how many titles or texts that may be shown it is
     */
    record Known(String word, int called, int shown) {}

    /**
     * A word near another one.
     *
     * @param edits how many letters are added, left out, changed or swapped
     */
    record Near(Known known, int edits) {}

    private Vocabulary(Collection<Known> all) {
        words = all.stream()
                .filter(known -> known.word().chars().noneMatch(Character::isDigit))
                .sorted(Comparator.comparingInt((Known known) -> known.word().length()).thenComparing(Known::word))
                .toList();
        letters = words.stream().mapToInt(known -> letters(known.word())).toArray();
        int longest = words.isEmpty() ? 0 : words.get(words.size() - 1).word().length();
        ofLength = new int[longest + 2];
        words.forEach(known -> ofLength[known.word().length() + 1]++);
        for (int length = 1; length < ofLength.length; length++) {
            ofLength[length] += ofLength[length - 1];
        }
        all.forEach(known -> byWord.put(known.word(), known));
    }

    /** Where the words of the length begin. */
    private int from(int length) {
        return ofLength[Math.max(0, Math.min(length, ofLength.length - 1))];
    }

    /** Reads the words of an index. */
    static Vocabulary of(IndexReader reader) {
        Map<String, Integer> called = counts(reader, Index.CALLED);
        Map<String, Integer> shown = counts(reader, Index.SHOWN);
        Map<String, Known> words = new TreeMap<>();
        called.forEach((word, count) -> words.put(word, new Known(word, count, shown.getOrDefault(word, 0))));
        shown.forEach((word, count) -> words.putIfAbsent(word, new Known(word, 0, count)));
        return new Vocabulary(words.values());
    }

    private static Map<String, Integer> counts(IndexReader reader, String field) {
        Map<String, Integer> counts = new HashMap<>();
        try {
            TermsEnum terms = MultiTerms.getTerms(reader, field) == null
                    ? TermsEnum.EMPTY
                    : MultiTerms.getTerms(reader, field).iterator();
            while (terms.next() != null) {
                counts.put(terms.term().utf8ToString(), terms.docFreq());
            }
        } catch (IOException e) {
            throw new UncheckedIOException("the index in memory could not be read", e);
        }
        return counts;
    }

    /** The word, if it is known. */
    Optional<Known> find(String word) {
        return Optional.ofNullable(byWord.get(word));
    }

    /** Known words at most so many edits away, the word itself not among them; nearest and commonest first. */
    List<Near> near(String word, int edits) {
        return near(word, edits, false);
    }

    /** Known words that begin with something at most one edit away from the word. */
    List<Near> startingNear(String word) {
        return near(word, 1, true);
    }

    private List<Near> near(String word, int edits, boolean start) {
        int own = letters(word);
        List<Near> near = new ArrayList<>();
        int end = start ? letters.length : from(word.length() + edits + 1);
        for (int i = from(word.length() - edits); i < end; i++) {
            boolean mayBe = Integer.bitCount(own & ~letters[i]) <= edits
                    && (start || Integer.bitCount(letters[i] & ~own) <= edits);
            if (mayBe) {
                Known known = words.get(i);
                int distance = start ? startDistance(word, known.word()) : distance(word, known.word());
                if (distance > 0 && distance <= edits) {
                    near.add(new Near(known, distance));
                }
            }
        }
        near.sort(Comparator.comparingInt(Near::edits)
                .thenComparing(each -> -each.known().called() - each.known().shown())
                .thenComparing(each -> each.known().word()));
        return near.subList(0, Math.min(MOST, near.size()));
    }

    private static int letters(String word) {
        int letters = 0;
        for (int i = 0; i < word.length(); i++) {
            letters |= 1 << (word.charAt(i) & 31);
        }
        return letters;
    }

    /**
     * Optimal string alignment distance: letters added, left out, changed, or swapped with their neighbour, no part of
     * the word touched twice.
     */
    static int distance(String a, String b) {
        return lastRow(a, b)[b.length()];
    }

    /** The distance from a word to the nearest beginning of another. */
    private static int startDistance(String start, String word) {
        int least = Integer.MAX_VALUE;
        for (int distance : lastRow(start, word)) {
            least = Math.min(least, distance);
        }
        return least;
    }

    private static int[] lastRow(String a, String b) {
        int[] twoBack = new int[b.length() + 1];
        int[] back = new int[b.length() + 1];
        int[] row = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            back[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            row[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                row[j] = Math.min(Math.min(row[j - 1], back[j]) + 1, back[j - 1] + change);
                if (i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1)) {
                    row[j] = Math.min(row[j], twoBack[j - 2] + 1);
                }
            }
            int[] spent = twoBack;
            twoBack = back;
            back = row;
            row = spent;
        }
        return back;
    }
}
