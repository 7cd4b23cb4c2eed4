package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.FeatureId;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Price and equipment asked of the stock in words. */
class StockSearchTest {
    private static final FeatureId FACTORY_CAB = new FeatureId("factory-cab");
    private static final FeatureId ADDED_CAB = new FeatureId("added-cab");
    private static final FeatureId DECK = new FeatureId("mower-deck");

    private final Finder finder = Finder.of(
            List.of(
                    explainer("factory-cab", "Factory cab", "cab tractor"),
                    explainer("added-cab", "Added cab", "soft cab"),
                    explainer("mower-deck", "Mid-mount mower deck", "belly mower"),
                    unit("dear", 45_000, Tag.fitted(FACTORY_CAB), Tag.fitted(DECK)),
                    unit("used", 19_500, Tag.fitted(FACTORY_CAB)),
                    unit("soft", 18_000, Tag.fitted(ADDED_CAB), Tag.fitted(DECK)),
                    unit("open", 15_000, Tag.fitted(DECK)),
                    unit("unseen", 12_000, Tag.unverified(FACTORY_CAB), Tag.unverified(DECK))),
            List.of(),
            Map.of());

    private static Entry explainer(String id, String title, String name) {
        return new Entry(Kind.EXPLAINER, id, "en", title, List.of(name), List.of(), List.of(), Set.of(),
                Optional.empty(), 1);
    }

    private static Entry unit(String id, long dollars, Tag... tags) {
        return new Entry(Kind.UNIT, id, "en", "Tractor " + id, List.of(), List.of(), List.of(), Set.of(tags),
                Optional.of(Money.ofDollars(dollars)), 0.6);
    }

    private List<String> units(String text) {
        return finder.find(Query.of(text, "en")).of(Kind.UNIT).stream().map(Hit::id).toList();
    }

    private Intent intent(String text) {
        return finder.find(Query.of(text, "en")).intent();
    }

    @Test
    void cabUnderAPriceIsAFilterAndALimit() {
        assertEquals(
                new Intent(List.of(Set.of(FACTORY_CAB, ADDED_CAB)), Optional.empty(),
                        Optional.of(Money.ofDollars(20_000L))),
                intent("cab under 20000"));
        assertEquals(List.of("soft", "used", "unseen"), units("cab under 20000"));
        assertEquals(List.of("soft"), units("soft cab and belly mower under $20,000"));
    }

    @Test
    void unitsThatFitComeBeforeEverythingElse() {
        List<Hit> hits = finder.find(Query.of("factory cab under 20k", "en")).hits();

        assertEquals("used", hits.get(0).id());
        assertTrue(hits.stream().anyMatch(hit -> hit.id().equals("factory-cab")));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "cab under 20000", "cab under $20,000", "cab below 20k", "cab less than 20 grand", "cab up to 20 thousand",
        "under 20000 with cab", "cab <20000", "cab max 20000 dollars", "cab at most $20k", "CAB UNDER 20K",
        "cab por menos de 20 mil", "cab hasta 20000", "cab $20,000"
    })
    void aLimitIsReadHoweverItIsWritten(String text) {
        assertEquals(Optional.of(Money.ofDollars(20_000L)), intent(text).atMost(), text);
        assertEquals(List.of(Set.of(FACTORY_CAB, ADDED_CAB)), intent(text).equipment(), text);
    }

    @Test
    void theLowerEndAndBothEndsAreReadToo() {
        assertEquals(Optional.of(Money.ofDollars(30_000L)), intent("cab over 30000").atLeast());
        assertEquals(List.of("dear"), units("cab over 30000"));
        assertEquals(List.of("open", "soft", "used"), units("between 15k and 19,500"));
    }

    @ParameterizedTest
    @ValueSource(strings = {
        "under 25 hp", "less than 500 hours", "over 1500 lbs", "up to 5 acres", "under 2000 pounds", "cab",
        "60 in deck",
        "more than 2015", "540", "10k trailer", "under the belly"
    })
    void otherNumbersAreNoPrices(String text) {
        assertTrue(intent(text).isNone(), text);
    }

    @ParameterizedTest
    @CsvSource({
        "tractor with mower deck", "mower deck in stock", "tractors with a belly mower", "tractor con belly mower"
    })
    void equipmentAloneIsAFilterWhereStockIsAskedFor(String text) {
        assertEquals(List.of(Set.of(DECK)), intent(text).equipment());
        assertEquals(Set.of("dear", "soft", "open", "unseen"), Set.copyOf(units(text)));
    }

    @Test
    void withoutOtherWordsTheCheapestThatFitsIsFirst() {
        List<String> found = new ArrayList<>(units("under 50000"));

        assertEquals(List.of("unseen", "open", "soft", "used", "dear"), found);
    }

    @Test
    void wordsBesideEquipmentAndPriceStillCount() {
        assertEquals("soft", units("tractor soft under 50000 mower deck").get(0));
    }
}
