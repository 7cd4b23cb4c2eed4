package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.GlossaryWord;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Search over the shipped content, against searches judged before the ranking was tuned. */
class ShippedSearchTest {
    @Test
    void theJudgedSearchesAreManyInTwoLanguagesAndNameWhatExists() {
        List<Judged> judged = Shelf.asked().stream().map(Quality.Asked::judged).toList();
        Set<String> known = Shelf.entries().stream()
                .map(entry -> entry.kind().id() + "/" + entry.id())
                .collect(Collectors.toSet());
        Set<String> unknown = judged.stream()
                .flatMap(each -> each.grades().keySet().stream())
                .filter(id -> !known.contains(id))
                .collect(Collectors.toCollection(TreeSet::new));

        assertTrue(judged.size() >= 150, () -> "only " + judged.size());
        assertTrue(judged.stream().filter(each -> each.language().equals("es")).count() >= 30);
        assertEquals(Set.of(), unknown);
    }

    @Test
    void judgedSearchesFindWhatTheyOughtTo() {
        assertAtLeast(new Quality(0, 0.85, 0.80, 0.95, 0.01), "all", each -> true);
    }

    @Test
    void spanishSearchesAreAsGood() {
        assertAtLeast(new Quality(0, 0.85, 0.80, 0.95, 0.01), "Spanish", each -> each.language().equals("es"));
    }

    /** Both halves are told, so that a ranking tuned to the one it was tuned on shows. */
    @Test
    void theHalfThatWasNotLookedAtWhileTuningIsNearlyAsGood() {
        assertAtLeast(new Quality(0, 0.85, 0.80, 0.95, 0.01), "tuned on", each -> !Shelf.isHeldOut(each));
        assertAtLeast(new Quality(0, 0.85, 0.80, 0.90, 0.01), "held out", Shelf::isHeldOut);
    }

    private static void assertAtLeast(Quality gate, String which, Predicate<Judged> some) {
        Quality quality = Quality.of(Shelf.asked().stream().filter(each -> some.test(each.judged())).toList());
        System.out.println("judged searches, " + which + ": " + quality);
        assertTrue(
                quality.mrr() >= gate.mrr()
                        && quality.ndcg() >= gate.ndcg()
                        && quality.recall() >= gate.recall()
                        && quality.zeroResults() <= gate.zeroResults(),
                () -> which + ": " + quality + " against " + gate);
    }

    /**
     * One edit in any word of five letters or more: a letter added, left out, changed, or swapped with the next. Some
     * edits make another word of the trade (shear, rear), so not every one can win.
     */
    @Test
    void aWordWithOneTypingErrorStillFindsWhatTheWordFinds() {
        long seed = 20260101;
        var random = new Random(seed);
        int asked = 0;
        List<String> lost = new ArrayList<>();
        for (String word : wordsOfTitles()) {
            String first = find(word).hits().get(0).id();
            for (String edited : edited(word, random)) {
                asked++;
                if (find(edited).hits().stream().noneMatch(hit -> hit.id().equals(first))) {
                    lost.add(edited + " for " + word);
                }
            }
        }
        double found = 1 - (double) lost.size() / asked;
        String told = "seed " + seed + ": " + found + " of " + asked + " found; lost " + lost;
        System.out.println(told);
        assertTrue(found >= 0.97, told);
    }

    private static Set<String> wordsOfTitles() {
        return Shelf.entries("en").stream()
                .filter(entry -> entry.kind() == Kind.EXPLAINER || entry.kind() == Kind.WORD)
                .flatMap(entry -> Stream.of(entry.title().toLowerCase(Locale.ROOT).split("[^a-z]+", -1)))
                .filter(word -> word.length() >= 5)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static List<String> edited(String word, Random random) {
        char letter = (char) ('a' + random.nextInt(26));
        int at = random.nextInt(word.length());
        int swap = random.nextInt(word.length() - 1);
        return List.of(
                word.substring(0, at) + letter + word.substring(at),
                word.substring(0, at) + word.substring(at + 1),
                word.substring(0, at) + letter + word.substring(at + 1),
                word.substring(0, swap) + word.charAt(swap + 1) + word.charAt(swap) + word.substring(swap + 2));
    }

    @ParameterizedTest
    @CsvSource({
        "Garant\u00eda, garantia", "TERCERA FUNCI\u00d3N, tercera funcion", "Hor\u00f3metro, HOROMETRO",
        "r\u00e9ar rem\u00f4tes, Rear Remotes", "ma\u00f1o, mano", "PTO, pto", "Grapple\u2019s, grapples"
    })
    void caseAndAccentsMakeNoDifference(String one, String other) {
        for (String language : List.of("en", "es")) {
            assertEquals(ids(Shelf.finder().find(Query.of(one, language))),
                    ids(Shelf.finder().find(Query.of(other, language))));
        }
    }

    @Test
    void everyOtherNameInTheGlossaryLeadsToItsWord() {
        List<String> lost = new ArrayList<>();
        for (GlossaryWord word : Shelf.content().getLibrary("en").glossary()) {
            for (String also : word.also()) {
                if (!ids(find(also)).contains("word/" + word.id())) {
                    lost.add(also + " for " + word.word());
                }
            }
        }
        assertEquals(List.of(), lost);
    }

    @Test
    void everyWordInTheGlossaryLeadsToItsOtherNames() {
        List<Entry> others = new ArrayList<>();
        Map<String, String> places = new TreeMap<>();
        for (GlossaryWord word : Shelf.content().getLibrary("en").glossary()) {
            for (int i = 0; i < word.also().size(); i++) {
                String id = word.id() + "-" + i;
                places.put(id, word.word());
                others.add(new Entry(Kind.WORD, id, "en", word.also().get(i), List.of(), List.of(), List.of(),
                        Set.of(), Optional.empty(), 1));
            }
        }
        var finder = Finder.of(others, Shelf.synonyms(), Map.of());
        List<String> lost = new ArrayList<>();
        places.forEach((id, word) -> {
            if (!ids(finder.find(Query.of(word, "en").withLimit(100))).contains("word/" + id)) {
                lost.add(word + " for " + id);
            }
        });
        assertEquals(List.of(), lost);
    }

    @Test
    void spanishWordsAreFoundInAnEnglishSession() {
        List<String> lost = new ArrayList<>();
        for (GlossaryWord word : Shelf.content().getLibrary("es").glossary()) {
            for (String language : List.of("en", "es")) {
                if (!ids(Shelf.finder().find(Query.of(word.word(), language))).contains("word/" + word.id())) {
                    lost.add(word.word() + " in " + language);
                }
            }
        }
        assertEquals(List.of(), lost);
    }

    @Test
    void everyTitleFindsItsEntryAmongTheFirstTwoAndCompletesFromItsBeginning() {
        List<String> lost = new ArrayList<>();
        for (Entry entry : Shelf.entries("en")) {
            if (entry.kind() == Kind.EXPLAINER || entry.kind() == Kind.WORD) {
                if (ids(find(entry.title())).indexOf(entry.kind().id() + "/" + entry.id()) > 1) {
                    lost.add(entry.title() + " gives " + ids(find(entry.title())));
                }
                String begun = entry.title().substring(0, entry.title().length() * 2 / 3);
                if (!find(begun).completions().contains(entry.title())) {
                    lost.add(entry.title() + " is none of " + find(begun).completions());
                }
            }
        }
        assertEquals(List.of(), lost);
    }

    private static Results find(String text) {
        return Shelf.finder().find(Query.of(text, "en"));
    }

    private static List<String> ids(Results results) {
        return results.hits().stream().map(hit -> hit.kind().id() + "/" + hit.id()).toList();
    }
}
