package fencerow.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** What other words stand for the same: synonyms, both ways, found anywhere in a query. */
final class Concepts {
    private static final int LONGEST_SPAN = 6;

    /**
     * Words of a query that other words stand for.
     *
     * @param covered how many words of the query they are
     * @param phrase  the other words, as stems by language
     */
    record Meant(int covered, Map<String, List<String>> phrase) {}

    private final Reader reader;
    private final List<Map<String, List<String>>> phrases = new ArrayList<>();
    private final Map<String, Map<String, Set<Integer>>> byKey = new HashMap<>();

    Concepts(Collection<Synonym> synonyms, Reader reader) {
        this.reader = reader;
        reader.languages().forEach(language -> byKey.put(language, new HashMap<>()));
        for (Synonym synonym : synonyms) {
            Reading word = reader.read(synonym.word());
            int wordPhrase = add(word);
            for (String also : synonym.also()) {
                Reading other = reader.read(also);
                point(other, wordPhrase);
                point(word, add(other));
            }
        }
    }

    private int add(Reading reading) {
        Map<String, List<String>> phrase = new HashMap<>();
        reader.languages().forEach(language -> phrase.put(language, reading.stems(language)));
        phrases.add(Map.copyOf(phrase));
        return phrases.size() - 1;
    }

    private void point(Reading from, int phrase) {
        byKey.forEach((language, keys) -> keys
                .computeIfAbsent(String.join(" ", from.stems(language)), key -> new LinkedHashSet<>())
                .add(phrase));
    }

    /** What the reading's words also stand for, each meaning once, with the most words that lead to it. */
    List<Meant> in(Reading reading) {
        Map<Integer, Integer> covered = new HashMap<>();
        for (String language : reader.languages()) {
            List<String> stems = reading.stems(language);
            Map<String, Set<Integer>> keys = byKey.getOrDefault(language, Map.of());
            for (int from = 0; from < stems.size(); from++) {
                for (int to = from + 1; to <= Math.min(stems.size(), from + LONGEST_SPAN); to++) {
                    String key = String.join(" ", stems.subList(from, to));
                    int length = to - from;
                    keys.getOrDefault(key, Set.of())
                            .forEach(phrase -> covered.merge(phrase, length, Math::max));
                }
            }
        }
        return covered.entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .map(meant -> new Meant(meant.getValue(), phrases.get(meant.getKey())))
                .toList();
    }
}
