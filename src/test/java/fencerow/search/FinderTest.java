package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.MachineClass;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** What the finder does with a handful of entries made up for it. */
class FinderTest {
    private static final Tag GARDEN = Tag.work("garden");

    private final Finder finder = Finder.of(
            List.of(
                    entry(Kind.EXPLAINER, "coupler", "Quick coupler", "You swap the bucket in a minute.\nNo hammer.",
                            Tag.stop(Stop.LOADER)),
                    entry(Kind.EXPLAINER, "ballast", "Liquid ballast", "Fluid in the rear tires adds weight.",
                            Tag.stop(Stop.TIRES)),
                    entry(Kind.WORD, "cutter", "Brush cutter", "Cuts thick stems."),
                    entry(Kind.ATTACHMENT, "cutter-5", "Brush cutter, 5 ft", "For a mid-size tractor.",
                            Tag.machineClass(MachineClass.MID), GARDEN),
                    entry(Kind.ATTACHMENT, "cutter-6", "Brush cutter, 6 ft", "For a big tractor.",
                            Tag.machineClass(MachineClass.LARGE)),
                    entry(Kind.ATTACHMENT, "rake", "Rock rake, 72 in", "Combs stones out of a seedbed.", GARDEN),
                    entry(Kind.JOB, "snow", "Clear snow", "Blow it or push it."),
                    entry(Kind.WORD, "blower", "Snow blower", "Throws it aside.")),
            List.of(
                    new Synonym("Brush cutter", List.of("slasher", "rough cut mower", "desbrozadora")),
                    new Synonym("Liquid ballast", List.of("juice in the tires", "lastre l\u00edquido"))),
            Map.of("snapgrip", new TopicId("coupler")));

    private static Entry entry(Kind kind, String id, String title, String text, Tag... tags) {
        return new Entry(kind, id, "en", title, List.of(), List.of(), List.of(Passage.of(text)), Set.of(tags),
                Optional.empty(), 1);
    }

    private Results find(String text) {
        return finder.find(Query.of(text, "en"));
    }

    private List<String> ids(String text) {
        return ids(find(text));
    }

    private static List<String> ids(Results results) {
        return results.hits().stream().map(Hit::id).toList();
    }

    @Test
    void findsFromTheFirstLetterOn() {
        for (String typed : List.of("q", "qu", "quick", "quick c", "quick coupler", "coup")) {
            assertEquals("coupler", ids(typed).get(0), typed);
        }
    }

    @Test
    void aSynonymLeadsToTheWordAndTheWordToASynonym() {
        assertEquals(Set.of("cutter", "cutter-5", "cutter-6"), Set.copyOf(ids("slasher")));
        assertEquals("ballast", ids("juice in tires").get(0));

        var other = Finder.of(
                List.of(entry(Kind.WORD, "x", "Slasher", "It is rough.")),
                List.of(new Synonym("Brush cutter", List.of("slasher"))),
                Map.of());
        assertEquals(List.of("x"), ids(other.find(Query.of("brush cutter", "en"))));
    }

    @Test
    void spanishWordsLeadThereInEitherLanguagesSession() {
        assertEquals(Set.of("cutter", "cutter-5", "cutter-6"), Set.copyOf(ids("desbrozadora")));
        Results spanish = finder.find(Query.of("desbrozadoras", "es"));
        assertEquals(Set.of("cutter", "cutter-5", "cutter-6"), Set.copyOf(ids(spanish)));
        assertEquals(ids("lastre liquido"), ids("LASTRE L\u00cdQUIDO"));
    }

    @Test
    void entriesOfTheSessionsLanguageStandInForTheirTranslations() {
        Entry english = entry(Kind.WORD, "cab", "Cab", "A closed one.");
        Entry spanish = new Entry(Kind.WORD, "cab", "es", "Cabina", List.of("cab"), List.of(),
                List.of(Passage.of("Cerrada.")), Set.of(), Optional.empty(), 1);
        var both = Finder.of(List.of(english, spanish), List.of(), Map.of());

        assertEquals("Cabina", both.find(Query.of("cab", "es")).hits().get(0).title().words());
        assertEquals(1, both.find(Query.of("cab", "es")).hits().size());
        assertEquals("Cab", both.find(Query.of("cab", "en")).hits().get(0).title().words());
    }

    @Test
    void pluralsCompoundsAndMeasuresAreTheSame() {
        assertEquals("blower", ids("snowblowers").get(0));
        assertEquals("blower", ids("snow blower").get(0));
        assertEquals("cutter-5", ids("60 inch brush cutter").get(0));
        assertEquals("cutter-6", ids("6-foot cutters").get(0));
        assertEquals("rake", ids("6 ft rake").get(0));
    }

    @Test
    void aMisspeltWordIsFoundAndPutRight() {
        Results results = find("brsuh cuter");

        assertEquals("cutter", results.hits().get(0).id());
        assertEquals(Optional.of("brush cutter"), results.didYouMean());
        assertEquals(Optional.empty(), find("brush cutter").didYouMean());
        assertEquals(Optional.empty(), find("brush cut").didYouMean());
    }

    @Test
    void anAliasLeadsToItsTopicAndIsNeverShown() {
        for (String typed : List.of("snapgrip", "SnapGrip", "snapgripp", "snapg", "snpagrip")) {
            Results results = find(typed);
            assertEquals(List.of("coupler"), ids(results), typed);
            assertEquals(Optional.empty(), results.didYouMean(), typed);
            assertFalse(results.toString().toLowerCase(Locale.ROOT).contains("snapg"), results.toString());
        }
    }

    @Test
    void theBestSentenceIsShownWithItsWordsMarked() {
        Hit hit = find("hammers swap").hits().get(0);

        assertEquals("You swap the bucket in a minute. No hammer.", hit.excerpt().words());
        assertEquals(List.of("swap", "hammer"), marked(hit.excerpt()));
        assertEquals(List.of("Quick"), marked(find("quick").hits().get(0).title()));
        assertEquals(List.of("Quick"), marked(find("qui").hits().get(0).title()));
    }

    @Test
    void theSectionOfTheExcerptIsNamed() {
        var entry = new Entry(Kind.EXPLAINER, "a", "en", "Deck", List.of(), List.of(),
                List.of(Passage.of("A mower."), new Passage("What it is", "It hangs low."),
                        new Passage("Can it be added?", "By a dealer.\nThe ramps cost more.")),
                Set.of(), Optional.empty(), 1);
        var one = Finder.of(List.of(entry), List.of(), Map.of());

        Hit hit = one.find(Query.of("ramps", "en")).hits().get(0);
        assertEquals("Can it be added?", hit.section());
        assertEquals("The ramps cost more.", hit.excerpt().words());
        assertEquals("A mower.", one.find(Query.of("deck", "en")).hits().get(0).excerpt().words());
        assertEquals("", one.find(Query.of("deck", "en")).hits().get(0).section());
    }

    private static List<String> marked(Marked words) {
        return words.spans().stream().map(span -> words.words().substring(span.from(), span.to())).toList();
    }

    @Test
    void hitsAreCountedByKindTheBestHitsKindFirst() {
        Results results = finder.find(Query.of("brush cutter", "en").withLimit(1));

        assertEquals(1, results.hits().size());
        assertEquals(Kind.WORD, results.groups().get(0).kind());
        assertEquals(new Results.Group(Kind.ATTACHMENT, 2), results.groups().get(1));
    }

    @Test
    void filtersLetThroughWhatCarriesTheTags() {
        Query query = Query.of("brush cutter", "en");

        assertEquals(Set.of("cutter-5", "cutter-6"),
                Set.copyOf(ids(finder.find(query.withKinds(Set.of(Kind.ATTACHMENT))))));
        // What names no class is about all classes; what names no kind of work is about none.
        assertEquals(Set.of("cutter", "cutter-6"),
                Set.copyOf(ids(finder.find(query.withOnly(Set.of(Tag.machineClass(MachineClass.LARGE)))))));
        assertEquals(List.of("cutter-5"), ids(finder.find(query.withOnly(Set.of(GARDEN)))));
        assertEquals(List.of(), ids(finder.find(
                query.withOnly(Set.of(GARDEN, Tag.machineClass(MachineClass.LARGE))))));
    }

    @Test
    void whatMattersToTheShopperComesFirst() {
        Query query = Query.of("brush cutter", "en").withKinds(Set.of(Kind.ATTACHMENT));

        assertEquals("cutter-6", ids(finder.find(query.withFavoured(
                Map.of(Tag.machineClass(MachineClass.LARGE), 3.0)))).get(0));
        assertEquals("cutter-5", ids(finder.find(query.withFavoured(Map.of(GARDEN, 3.0)))).get(0));
    }

    @Test
    void whatIsTypedIsCompletedToWholePhrases() {
        assertEquals(List.of("Snow blower", "Clear snow"), find("sno").completions());
        assertEquals(List.of("Quick coupler"), find("coupl").completions());
        assertEquals(List.of("Snow blower", "Clear snow"), find("snow ").completions());
        assertEquals(List.of(), find("sno ").completions());
        assertEquals(List.of(), find("Quick coupler").completions());
    }

    @Test
    void thereIsNoDeadEnd() {
        for (String typed : List.of("", " ", "?!", "xylophone", "zzzzzz", "the", "liquidate", "1234567")) {
            Results results = find(typed);
            assertFalse(results.hits().isEmpty() && results.nearest().isEmpty(), typed);
        }
        assertEquals("ballast", find("ballistics").nearest().stream()
                .map(Hit::id).findFirst().orElseGet(() -> ids("ballistics").get(0)));
    }

    @Test
    void anyTextIsTaken() {
        List<String> odd = List.of("a".repeat(10_000), "\"", "AND OR NOT", "title:x*", "((", "\u0000\uD800", "-",
                "\u4e2d\u6587", "\uD83D\uDE9C", "snow\tblower\n", "60 in in in 60 60 ft", "<b>snow</b>");
        for (String text : odd) {
            find(text);
        }
        assertEquals("blower", ids("\"snow\" AND (blower)").get(0));
    }

    @Test
    void manyThreadsMayAskAtOnce() throws Exception {
        List<String> queries = List.of("quick coupler", "slasher", "brsuh cuter", "sno", "60 inch brush cutter");
        List<Results> alone = queries.stream().map(this::find).toList();
        var pool = Executors.newFixedThreadPool(4);
        try {
            List<Future<List<Results>>> asked = new ArrayList<>();
            for (int i = 0; i < 40; i++) {
                asked.add(pool.submit(() -> queries.stream().map(this::find).toList()));
            }
            for (Future<List<Results>> one : asked) {
                assertEquals(alone, one.get());
            }
        } finally {
            pool.shutdownNow();
        }
    }

    @Test
    void askingForNothingOrByNothingIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> Query.of("a", "en").withLimit(0));
        assertThrows(IllegalArgumentException.class, () -> Query.of("a", "en").withFavoured(Map.of(GARDEN, 0.0)));
        assertThrows(IllegalArgumentException.class, () -> new Entry(Kind.WORD, "a", "en", "A", List.of(), List.of(),
                List.of(), Set.of(), Optional.empty(), 0));
    }

    @Test
    void aFinderOverNothingFindsNothing() {
        var empty = Finder.of(List.of(), List.of(), Map.of());

        assertEquals(0, empty.size());
        for (String text : Stream.of("a", "snow blower", "cab under 20000", "").toList()) {
            assertTrue(empty.find(Query.of(text, "en")).hits().isEmpty());
        }
    }
}
