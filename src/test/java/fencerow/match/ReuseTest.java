package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Catalogue;
import fencerow.stock.Fitter;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.function.BiFunction;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A ranking made from the one before it is the ranking that would be made afresh, whatever answer changed. */
class ReuseTest {
    private static final int CHANGES = 12;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    private static Needs with(List<Requirement> requirements) {
        return Yard.needs(requirements.toArray(new Requirement[0]));
    }

    private static Needs added(Needs needs, Random random) {
        List<Requirement> more = new ArrayList<>(needs.requirements());
        String feature = "feature-" + random.nextInt(RandomYards.FEATURES);
        more.add(random.nextInt(more.size() + 1), random.nextInt(3) == 0
                ? Yard.wish(Yard.needs(feature))
                : Yard.must(Yard.needs(feature)));
        return with(more);
    }

    private static Needs dropped(Needs needs, Random random) {
        List<Requirement> fewer = new ArrayList<>(needs.requirements());
        if (!fewer.isEmpty()) {
            fewer.remove(random.nextInt(fewer.size()));
        }
        return with(fewer);
    }

    /** How much of the shared port block must be left free: none, or all of it. */
    private static Needs asked(Needs needs, int free) {
        List<Requirement> others = new ArrayList<>(needs.requirements());
        others.removeIf(each -> each.demand().of().value().equals("port-block"));
        others.add(Yard.must(Yard.atLeast("port-block", Amount.count(free), Yard.LOADER_WORK)));
        return with(others);
    }

    private static void assertReusesRightly(long seed, BiFunction<Needs, Random, Needs> change) {
        var yards = new RandomYards(seed);
        var random = new Random(seed);
        for (int n = 0; n < 25; n++) {
            RandomYards.Case each = yards.next();
            Lot lot = new Matcher(each.catalogue()).lot(yards.units(8));
            Needs needs = each.needs();
            Ranking ranking = Ranking.of(lot, needs);
            for (int c = 0; c < CHANGES; c++) {
                needs = change.apply(needs, random);
                ranking = ranking.next(lot, needs);
                assertAlike(Ranking.of(lot, needs), ranking, "seed " + seed + ", case " + n + ", change " + c);
            }
        }
    }

    private static void assertAlike(Ranking fresh, Ranking reused, String where) {
        assertEquals(fresh.matches().size(), reused.matches().size(), where);
        for (int i = 0; i < fresh.matches().size(); i++) {
            Match one = fresh.matches().get(i);
            Match other = reused.matches().get(i);
            assertEquals(one.unit().id(), other.unit().id(), where);
            assertEquals(one.verdict(), other.verdict(), where);
            assertEquals(one.price(), other.price(), where);
            assertEquals(one.score(), other.score(), where);
            assertEquals(one.finding(), other.finding(), where);
            assertEquals(one.verify(), other.verify(), where);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void requirementAdded(long seed) {
        assertReusesRightly(seed, ReuseTest::added);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void requirementDropped(long seed) {
        assertReusesRightly(seed, ReuseTest::dropped);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void thresholdTightenedAndLoosenedAgain(long seed) {
        assertReusesRightly(seed, (needs, random) -> asked(needs, random.nextInt(3)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void anyOfThemInAnyOrder(long seed) {
        assertReusesRightly(seed, (needs, random) -> switch (random.nextInt(3)) {
            case 0 -> added(needs, random);
            case 1 -> dropped(needs, random);
            default -> asked(needs, random.nextInt(3));
        });
    }

    /** Content was changed meanwhile: the same places in the catalogue are other items. */
    @Test
    void rankingForUnitsOfAnotherCatalogueTakesNothingOver() {
        Needs needs = Yard.needs(Yard.must(Yard.atLeast("grip", new Amount(Dimension.MASS, 200), Yard.PARKED)));
        Lot strong = kitThatGives(200);
        Lot weak = kitThatGives(100);

        Ranking first = Ranking.of(strong, needs);
        Ranking second = first.next(weak, needs);

        assertEquals(Money.ofDollars(70), first.matches().get(0).price().plan().high());
        assertEquals(Money.ofDollars(140), second.matches().get(0).price().plan().high());
        assertAlike(Ranking.of(weak, needs), second, "weak kit");
    }

    /** A unit, and a kit for $70 of which there can be two. */
    private static Lot kitThatGives(double kilograms) {
        Catalogue catalogue = new Yard()
                .sum("grip", Dimension.MASS)
                .addOn("kit", 2, OptionalInt.empty(), Fitter.ANY_SHOP, 70,
                        List.of(Yard.kilograms("grip", kilograms)), List.of())
                .catalogue();
        return new Matcher(catalogue).lot(List.of(Yard.unit().make()));
    }

    @Test
    void equalPartsOfTwoProblemsAreAnsweredOnceAndUnequalOnesAreNot() {
        Problem problem = new RandomProblems(3).next();
        Problem same = new RandomProblems(3).next();
        long[] other = problem.headroom().clone();
        other[0]--;
        Solved solved = Solved.nothing();

        Part part = solved.of(problem);

        assertSame(part, solved.next().of(same));
        assertNotSame(part, solved.of(new Problem(problem.setup(), other, problem.pieces())));
    }
}
