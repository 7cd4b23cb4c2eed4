package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The score is a weighted sum of wishes that are met or not. Held against worked examples of decision analysis; a
 * graded criterion is so many wishes as it has steps, each worth its step. The method of the ideal point (TOPSIS) and
 * swing weights have no counterpart here: weights stand in the content, and nothing is measured from an ideal.
 */
class WeightedScoreTest {
    /** Three criteria of four alternatives: Tzeng and Huang, Multiple Attribute Decision Making, CRC Press, 2011. */
    private static final Map<String, List<Integer>> ALTERNATIVES = Map.of(
            "a0", List.of(5, 8, 4), "a1", List.of(7, 6, 8), "a2", List.of(8, 8, 6), "a3", List.of(7, 4, 6));
    /** The values that occur above the lowest, rising. */
    private static final List<List<Integer>> STEPS = List.of(List.of(7, 8), List.of(6, 8), List.of(6, 8));
    private static final List<Integer> LOWEST = List.of(5, 4, 4);

    private static String step(int criterion, int value) {
        return "c" + criterion + "-from-" + value;
    }

    private static Matcher matcher() {
        Yard yard = new Yard();
        for (int c = 0; c < STEPS.size(); c++) {
            for (int value : STEPS.get(c)) {
                yard.feature(step(c, value));
            }
        }
        return yard.matcher();
    }

    private static Unit unit(String id) {
        Yard.UnitMaker unit = Yard.unit();
        for (int c = 0; c < STEPS.size(); c++) {
            for (int value : STEPS.get(c)) {
                if (ALTERNATIVES.get(id).get(c) >= value) {
                    unit.fitted(step(c, value));
                }
            }
        }
        return unit.make(id);
    }

    /** Min-max scaling: each step is worth its share of the criterion's span. */
    private static Requirement[] wishes(int... weights) {
        List<Requirement> wishes = new ArrayList<>();
        for (int c = 0; c < STEPS.size(); c++) {
            int before = LOWEST.get(c);
            int span = STEPS.get(c).get(1) - before;
            for (int value : STEPS.get(c)) {
                wishes.add(wish(step(c, value), weights[c] * (value - before) / span));
                before = value;
            }
        }
        return wishes.toArray(new Requirement[0]);
    }

    private static Requirement wish(String feature, int weight) {
        Requirement plain = Yard.wish(Yard.needs(feature));
        return new Requirement(plain.id(), plain.demands(), false, weight, plain.why());
    }

    private static int score(String id, int... weights) {
        return matcher().match(unit(id), Yard.needs(wishes(weights))).score().percent();
    }

    /** Weights .3 .4 .3 give .40 .70 .85 .35; worked out from the data above. */
    @Test
    void theWeightedSumOfAPublishedMatrixComesOut() {
        assertEquals(40, score("a0", 300, 400, 300));
        assertEquals(70, score("a1", 300, 400, 300));
        assertEquals(85, score("a2", 300, 400, 300));
        assertEquals(35, score("a3", 300, 400, 300));
        Ranking ranking = Ranking.of(matcher(), List.of(unit("a0"), unit("a1"), unit("a2"), unit("a3")),
                Yard.needs(wishes(300, 400, 300)));
        assertEquals(List.of("a2", "a1", "a0", "a3"),
                ranking.matches().stream().map(match -> match.unit().id().value()).toList());
    }

    /**
     * With the third weight raised and the others kept 3 to 4, the second alternative overtakes the third at 6/13: by
     * the method of Triantaphyllou and Sanchez, Decision Sciences 28, 1997.
     */
    @Test
    void theOrderTurnsAtTheWeightThatSensitivityAnalysisNames() {
        assertEquals(score("a1", 126, 168, 252), score("a2", 126, 168, 252), "at 6/13");
        assertEquals(1, Integer.signum(score("a2", 180, 240, 280) - score("a1", 180, 240, 280)), "at 0.40");
        assertEquals(1, Integer.signum(score("a1", 144, 192, 364) - score("a2", 144, 192, 364)), "at 0.52");
    }

    /**
     * Rank order centroid weights (Barron and Barrett, Management Science 42, 1996; from memory) and rank sum weights
     * of four wishes, as the weight of each: what one of them alone comes to, rounded down.
     */
    @ParameterizedTest(name = "{0} {1} {2} {3}: {4} {5} {6} {7}")
    @CsvSource({"5208, 2708, 1458, 625, 52, 27, 14, 6", "4, 3, 2, 1, 40, 30, 20, 10"})
    void aWishAloneScoresItsWeight(int w1, int w2, int w3, int w4, int s1, int s2, int s3, int s4) {
        int[] weights = {w1, w2, w3, w4};
        int[] scores = {s1, s2, s3, s4};
        Yard yard = new Yard().feature("w0").feature("w1").feature("w2").feature("w3");
        Requirement[] wishes = new Requirement[weights.length];
        for (int i = 0; i < weights.length; i++) {
            wishes[i] = wish("w" + i, weights[i]);
        }
        for (int i = 0; i < weights.length; i++) {
            Match alone = yard.matcher().match(Yard.unit().fitted("w" + i).make(), Yard.needs(wishes));
            assertEquals(scores[i], alone.score().percent(), "wish " + i);
        }
    }
}
