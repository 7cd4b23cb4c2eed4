package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.AddOn;
import fencerow.stock.Unit;
import fencerow.terms.Effect;
import fencerow.terms.Fact;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.function.BiConsumer;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What holds for every yard, unit and shopper, on seeded random ones. */
class MatchLawsTest {
    private static final int CASES_PER_SEED = Integer.getInteger("fencerow.cases", 150);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 4);
    }

    private static void forEachCase(long seed, BiConsumer<RandomYards.Case, String> law) {
        var yards = new RandomYards(seed);
        for (int n = 0; n < CASES_PER_SEED; n++) {
            law.accept(yards.next(), "seed " + seed + ", case " + n);
        }
    }

    private static Match match(RandomYards.Case each, Unit unit, Needs needs) {
        return new Matcher(each.catalogue()).match(unit, needs);
    }

    private static Unit with(Unit unit, Map<FeatureId, Fact> facts, Set<ItemId> bundled) {
        return new Unit(
                unit.id(),
                unit.model(),
                unit.condition(),
                unit.year(),
                unit.hours(),
                unit.availability(),
                unit.leadDays(),
                unit.price(),
                facts,
                bundled,
                unit.catchUp());
    }

    private static void assertNoWorse(Match before, Match after, String where) {
        assertTrue(after.verdict().compareTo(before.verdict()) <= 0, where);
        if (before.verdict().hasPlan()) {
            assertTrue(after.price().plan().middle().compareTo(before.price().plan().middle()) <= 0, where);
        }
        assertTrue(after.score().percent() >= before.score().percent(), where);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void equipmentThatOnlyProvidesNeverHurts(long seed) {
        forEachCase(seed, (each, where) -> {
            Match before = match(each, each.unit(), each.needs());
            for (int f = 0; f < RandomYards.FEATURES; f++) {
                Map<FeatureId, Fact> facts = new HashMap<>(each.unit().facts());
                facts.put(new FeatureId("feature-" + f), Fact.fitted());
                Match after = match(each, with(each.unit(), facts, Set.of()), each.needs());
                assertNoWorse(before, after, where + ", feature " + f);
            }
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void askingForLessNeverHurts(long seed) {
        forEachCase(seed, (each, where) -> {
            Match before = match(each, each.unit(), each.needs());
            for (Requirement must : each.needs().musts()) {
                assertNoWorse(before, match(each, each.unit(), each.needs().without(must)), where + must.id());
            }
        });
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void planAppliedToTheUnitMakesItReadyAtNoFurtherPrice(long seed) {
        forEachCase(seed, (each, where) -> {
            Match before = match(each, each.unit(), each.needs());
            if (before.findPlan().isEmpty()) {
                return;
            }
            Plan plan = before.findPlan().get();
            Map<FeatureId, Fact> facts = new HashMap<>(each.unit().facts());
            Set<ItemId> bundled = new HashSet<>();
            for (Plan.Line line : plan.lines()) {
                if (each.catalogue().findItem(line.item()).orElseThrow() instanceof AddOn addOn) {
                    featuresGiven(addOn).forEach(feature -> facts.put(feature, Fact.fitted()));
                } else {
                    bundled.add(line.item());
                }
            }
            Match after = match(each, with(each.unit(), facts, bundled), each.needs());
            assertEquals(Verdict.READY, after.verdict(), where);
            assertTrue(after.score().met().containsAll(before.score().met()), where);
            assertTrue(after.score().met().containsAll(before.score().planned()), where);
        });
    }

    private static List<FeatureId> featuresGiven(AddOn addOn) {
        return addOn.gives().stream()
                .map(Effect::of)
                .filter(of -> of.value().startsWith("feature-"))
                .map(of -> new FeatureId(of.value()))
                .toList();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void namedSetCannotBeMetAndEveryPartOfItCan(long seed) {
        forEachCase(seed, (each, where) -> {
            Match match = match(each, each.unit(), each.needs());
            if (match.finding() instanceof Finding.Infeasible infeasible) {
                List<Requirement> set = infeasible.irreducible();
                assertTrue(!set.isEmpty() && !infeasible.why().isEmpty(), where);
                assertTrue(!isFeasible(each, set), where);
                for (Requirement left : set) {
                    List<Requirement> rest = new ArrayList<>(set);
                    rest.remove(left);
                    assertTrue(isFeasible(each, rest), where + " without " + left.id());
                }
            }
        });
    }

    private static boolean isFeasible(RandomYards.Case each, List<Requirement> musts) {
        return match(each, each.unit(), Yard.needs(musts.toArray(new Requirement[0]))).verdict().hasPlan();
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void orderOfRequirementsMakesNoDifferenceToVerdictAndPrice(long seed) {
        var random = new Random(seed);
        forEachCase(seed, (each, where) -> {
            List<Requirement> shuffled = new ArrayList<>(each.needs().requirements());
            Collections.shuffle(shuffled, random);
            Match before = match(each, each.unit(), each.needs());
            Match after = match(each, each.unit(), Yard.needs(shuffled.toArray(new Requirement[0])));
            assertEquals(before.verdict(), after.verdict(), where);
            assertEquals(before.findPlan(), after.findPlan(), where);
            assertEquals(before.score().percent(), after.score().percent(), where);
        });
    }
}
