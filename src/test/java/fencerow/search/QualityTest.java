package fencerow.search;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/**
 * Figures against worked examples. Formula: gain / log2(rank + 1), as at stats.stackexchange.com/questions/122266;
 * the gains 3, 2, 3, 0, 1, 2 are the usual example, its values computed by hand from the formula (a page at
 * amanailab.com/code-lab/ndcg prints 0.78514 for the last but one case, which its own formula does not give); the
 * binary example is from kaivid-labs.github.io/evret.
 */
class QualityTest {
    private static final List<Integer> GAINS = List.of(3, 2, 3, 0, 1, 2);

    @Test
    void discountedGainIsThatOfTheWorkedExample() {
        assertEquals(6.8611, Quality.dcg(GAINS, 10), 5e-5);
        assertEquals(7.1410, Quality.dcg(List.of(3, 3, 2, 2, 1, 0), 10), 5e-5);
    }

    @Test
    void normalisedGainIsThatOfTheWorkedExample() {
        assertEquals(0.9608, Quality.ndcg(GAINS, GAINS, 10), 5e-5);
        assertEquals(0.7850, Quality.ndcg(GAINS, List.of(3, 2, 3, 0, 1, 2, 3, 2), 6), 5e-5);
    }

    @Test
    void normalisedGainOfTheFirstFourIsThatOfTheWorkedExample() {
        assertEquals(0.8531, Quality.ndcg(GAINS, List.of(3, 3, 2, 2), 4), 5e-5);
    }

    @Test
    void normalisedGainOfBinaryGradesIsThatOfTheWorkedExample() {
        assertEquals(0.4162, Quality.ndcg(List.of(0, 0, 1, 0, 1), List.of(1, 1, 1), 5), 5e-5);
    }

    @Test
    void meanReciprocalRankOfRanksThreeTwoOne() {
        double mean = (Quality.reciprocalRank(List.of(0, 0, 1))
                        + Quality.reciprocalRank(List.of(0, 2, 0))
                        + Quality.reciprocalRank(List.of(3)))
                / 3;

        assertEquals(0.6111, mean, 5e-5);
        assertEquals(0, Quality.reciprocalRank(List.of(0, 0)));
    }

    @Test
    void recallCountsWhatCanBeAmongTheFirst() {
        assertEquals(2.0 / 3, Quality.recall(List.of(1, 0, 3), List.of(1, 3, 2, 0), 10), 1e-12);
        assertEquals(0.5, Quality.recall(List.of(0, 1), List.of(1, 1, 1, 1), 2), 1e-12);
    }

    @Test
    void anIdAloneStandsForAnyKindAndCountsOnce() {
        var finder = Finder.of(
                List.of(entry(Kind.EXPLAINER), entry(Kind.WORD)), List.of(), Map.of());

        var asked = Quality.Asked.of(finder, new Judged("grapple", "en", Map.of("grapple", 3)));

        assertEquals(List.of(3, 0), asked.gains());
    }

    private static Entry entry(Kind kind) {
        return new Entry(kind, "grapple", "en", "Grapple", List.of(), List.of(), List.of(), Set.of(),
                Optional.empty(), 1);
    }

    @Test
    void readsLinesAndSaysWhereALineIsWrong() {
        List<Judged> read = Judged.read("my.tsv", List.of("# a note", "", "snow blower\ten\tword/snow-blower:3, a:1"));
        assertEquals(
                List.of(new Judged("snow blower", "en", Map.of("word/snow-blower", 3, "a", 1))), read);

        for (String wrong : List.of("snow", "snow\ten", "snow\ten\tword", "snow\ten\tword:4", "snow\ten\t:3")) {
            var error = assertThrows(
                    IllegalArgumentException.class, () -> Judged.read("my.tsv", List.of("# a note", wrong)));
            assertTrue(error.getMessage().startsWith("my.tsv:2: "), error.getMessage());
        }
    }
}
