package fencerow.search;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A text read word by word.
 *
 * @param words   its words in order
 * @param joined  neighbouring words written as one, and so perhaps meant
 * @param typing  whether the last word may be unfinished
 */
record Reading(List<Word> words, List<String> joined, boolean typing) {
    /**
     * One word.
     *
     * @param folded  in lower case without accents
     * @param stems   by language; none in a language where the word says nothing
     * @param measure whether it is a number with a unit
     * @param from    where it begins in the text
     * @param to      where it ends
     */
    record Word(String folded, Map<String, String> stems, boolean measure, int from, int to) {
        Optional<String> stem(String language) {
            return Optional.ofNullable(stems.get(language));
        }

        boolean isNumber() {
            return Character.isDigit(folded.charAt(0));
        }
    }

    Reading {
        words = List.copyOf(words);
        joined = List.copyOf(joined);
    }

    /** All words, folded, with single blanks between. */
    String folded() {
        return words.stream().map(Word::folded).collect(Collectors.joining(" "));
    }

    /** The words that say something in the language; all of them where none does. */
    List<Word> telling(String language) {
        List<Word> telling = words.stream()
                .filter(word -> !Analysis.isStop(language, word.folded()))
                .toList();
        return telling.isEmpty() ? words : telling;
    }

    /** The words that have a stem in the language; all of them where none has. */
    List<Word> stemmed(String language) {
        List<Word> stemmed = words.stream().filter(word -> word.stem(language).isPresent()).toList();
        return stemmed.isEmpty() ? words : stemmed;
    }

    /** Whether all words are such that say nothing in the language. */
    boolean saysNothing(String language) {
        return words.stream().noneMatch(word -> word.stem(language).isPresent());
    }

    /** The stems in the language, in order; the words themselves where it has none. */
    List<String> stems(String language) {
        return stemmed(language).stream().map(word -> word.stem(language).orElse(word.folded())).toList();
    }

    /** Words as one string of stems. */
    static String key(List<Word> words, String language) {
        return words.stream().map(word -> word.stem(language).orElse(word.folded())).collect(Collectors.joining(" "));
    }

    /** Whether the word is the last one and may be unfinished. */
    boolean isUnfinished(Word word) {
        return typing && word.equals(words.get(words.size() - 1));
    }
}
