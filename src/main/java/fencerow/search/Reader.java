package fencerow.search;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.regex.Pattern;
import org.apache.lucene.analysis.Analyzer;

/** Reads queries and names the way the index reads its text. */
final class Reader {
    private static final Pattern INCHES = Pattern.compile("(?<=\\d)\\s?[\"\u201d\u2033]");
    private static final Pattern FEET = Pattern.compile("(?<=\\d)\\s?['\u2019\u2032](?![\\p{L}\\d])");

    private final List<String> languages;
    private final Analyzer surface = Analysis.surface();

    /** Reads with the stems of these languages. */
    Reader(List<String> languages) {
        this.languages = List.copyOf(languages);
    }

    List<String> languages() {
        return languages;
    }

    /** Reads a text. */
    Reading read(String text) {
        String plain = FEET.matcher(INCHES.matcher(text).replaceAll(" in")).replaceAll(" ft");
        List<Reading.Word> words = words(plain);
        List<String> joined = new ArrayList<>();
        for (int i = 1; i < words.size(); i++) {
            joined.add(words.get(i - 1).folded() + words.get(i).folded());
        }
        boolean typing = !words.isEmpty() && plain.length() == words.get(words.size() - 1).to();
        return new Reading(words, joined, typing);
    }

    private List<Reading.Word> words(String text) {
        Map<String, UnaryOperator<String>> stemmers = new HashMap<>();
        languages.forEach(language -> stemmers.put(language, Analysis.stemmer(language)));
        return Analysis.tokens(surface, text).stream()
                .map(token -> new Reading.Word(
                        token.word(), stems(token.word(), stemmers), token.measure(), token.from(), token.to()))
                .toList();
    }

    private Map<String, String> stems(String word, Map<String, UnaryOperator<String>> stemmers) {
        Map<String, String> stems = new HashMap<>();
        stemmers.forEach((language, stemmer) -> {
            if (!Analysis.isStop(language, word)) {
                stems.put(language, stemmer.apply(word));
            }
        });
        return stems;
    }

    /** The text as one string of stems, in each language. */
    List<String> wholes(String text) {
        Reading reading = read(text);
        return languages.stream().map(language -> Reading.key(reading.stemmed(language), language)).toList();
    }
}
