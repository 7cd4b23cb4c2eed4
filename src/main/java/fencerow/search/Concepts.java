package fencerow.search;

import java.util.ArrayList;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;

/** What other words stand for the same: synonyms, both ways, found anywhere in a query. */
final class Concepts {
    /** In place of a language: the words as written, of a phrase that a language has no stems for. */
    static final String AS_WRITTEN = "";

    private static final int LONGEST_RUN = 6;

    /**
     * A run of words in a query that other words stand for.
     *
     * @param words   the run
     * @param phrases the other words, each as stems by language
     */
    record Meant(List<Reading.Word> words, List<Map<String, List<String>>> phrases) {}

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
        if (reader.languages().stream().anyMatch(language -> reading.saysNothing(language))) {
            phrase.put(AS_WRITTEN, reading.words().stream().map(Reading.Word::folded).toList());
        }
        phrases.add(Map.copyOf(phrase));
        return phrases.size() - 1;
    }

    private void point(Reading from, int phrase) {
        byKey.forEach((language, keys) -> keys
                .computeIfAbsent(Reading.key(from.stemmed(language), language), key -> new LinkedHashSet<>())
                .add(phrase));
    }

    /** What runs of the reading's words also stand for, longest runs first. */
    List<Meant> in(Reading reading) {
        Map<List<Reading.Word>, Set<Integer>> byRun = new LinkedHashMap<>();
        for (String language : reader.languages()) {
            Map<String, Set<Integer>> keys = byKey.getOrDefault(language, Map.of());
            List<Reading.Word> words = reading.stemmed(language);
            for (int from = 0; from < words.size(); from++) {
                for (int to = from + 1; to <= Math.min(words.size(), from + LONGEST_RUN); to++) {
                    List<Reading.Word> run = words.subList(from, to);
                    Set<Integer> found = keys.getOrDefault(Reading.key(run, language), Set.of());
                    if (!found.isEmpty()) {
                        byRun.computeIfAbsent(run, each -> new TreeSet<>()).addAll(found);
                    }
                }
            }
        }
        return byRun.entrySet().stream()
                .map(run -> new Meant(run.getKey(), run.getValue().stream().map(phrases::get).toList()))
                .sorted(Comparator.comparingInt((Meant meant) -> meant.words().size()).reversed())
                .toList();
    }
}
