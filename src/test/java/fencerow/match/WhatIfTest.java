package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class WhatIfTest {
    private static final Requirement CAB = Yard.must(Yard.needs("factory-cab"));
    private static final Requirement LIGHTS = Yard.must(Yard.needs("lights"));
    private static final Requirement PTO = Yard.must(Yard.needs("mid-pto"));
    private static final Matcher MATCHER = new Yard()
            .feature("factory-cab")
            .feature("lights")
            .feature("mid-pto")
            .addOn("light-kit", 200, List.of(Yard.gives("lights")), List.of())
            .matcher();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 4);
    }

    private static Needs within(long dollars, Requirement... requirements) {
        return new Needs(List.of(requirements), Set.of(), Set.of(), Optional.of(Money.ofDollars(dollars)),
                OptionalDouble.empty());
    }

    private static Ranking rank(Needs needs, Unit... units) {
        return Ranking.of(MATCHER, List.of(units), needs);
    }

    @Test
    void budgetThatIsTooLowIsRaisedByTheLeastThatHelps() {
        Unit plain = Yard.unit().make("plain");
        Unit lit = Yard.unit().fitted("lights").make("lit");

        WhatIf.Budget budget = rank(within(14000, LIGHTS), plain, lit).whatIf().budget().orElseThrow();

        assertEquals(Money.ofDollars(1000L), budget.raise());
        assertEquals(2, budget.gained().size());
        assertEquals(Optional.empty(), rank(within(16000, LIGHTS), plain, lit).whatIf().budget());
        assertEquals(Optional.empty(), rank(Yard.needs(LIGHTS), plain, lit).whatIf().budget());
    }

    @Test
    void overTheBudgetTheConcessionIsTheMustHaveThatBringsItWithinElseTheMoney() {
        Unit plain = Yard.unit().make();
        Ranking nearly = rank(within(15100, LIGHTS), plain);
        Ranking far = rank(within(14000, LIGHTS), plain);

        var dropped = (Concession.Without) nearly.whatIf().concession(nearly.matches().get(0)).orElseThrow();
        var raised = (Concession.Raise) far.whatIf().concession(far.matches().get(0)).orElseThrow();

        assertEquals(LIGHTS, dropped.dropped());
        assertEquals(Money.ofDollars(1200L), raised.by());
    }

    @Test
    void whereNoSingleMustHaveHelpsThePairThatDoesIsNamed() {
        Ranking ranking = rank(Yard.needs(CAB, LIGHTS, PTO), Yard.unit().make());

        WhatIf.Pair pair = ranking.whatIf().pair(10, () -> false).orElseThrow();

        assertEquals(List.of(), ranking.whatIf().changes());
        assertEquals(List.of(CAB, PTO), List.of(pair.dropped(), pair.alsoDropped()));
        assertEquals(ranking.matches(), pair.gained());
        assertEquals(Optional.empty(), ranking.whatIf().pair(10, () -> true));
    }

    @Test
    void onlyUnitsOverTheBudgetAreGainedByRaisingIt() {
        Unit cheap = Yard.unit().asking(12000).make("a-cheap");
        Unit near = Yard.unit().asking(14500).make("b-near");
        Unit far = Yard.unit().make("c-far");

        WhatIf.Budget budget = rank(within(14000), cheap, near, far).whatIf().budget().orElseThrow();

        assertEquals(Money.ofDollars(500L), budget.raise());
        assertEquals(List.of("b-near", "c-far"), ids(budget.gained()));
    }

    private static List<String> ids(List<Match> matches) {
        return matches.stream().map(match -> match.unit().id().value()).toList();
    }

    @Test
    void priceThatIsJustTheBudgetIsWithinIt() {
        Ranking ranking = rank(within(15000, LIGHTS), Yard.unit().make());

        var dropped = (Concession.Without) ranking.whatIf().concession(ranking.matches().get(0)).orElseThrow();

        assertEquals(LIGHTS, dropped.dropped());
        assertEquals(Optional.empty(), rank(within(15200, LIGHTS), Yard.unit().make()).whatIf().budget());
    }

    @Test
    void ofTheMustHavesThatWouldDoTheOneThatLeavesTheLowestPriceIsTheConcession() {
        Matcher matcher = new Yard()
                .feature("lights")
                .feature("canopy")
                .addOn("light-kit", 200, List.of(Yard.gives("lights")), List.of(), "canopy-kit")
                .addOn("canopy-kit", 900, List.of(Yard.gives("canopy")), List.of())
                .matcher();
        Requirement canopy = Yard.must(Yard.needs("canopy"));
        Ranking ranking = Ranking.of(matcher, List.of(Yard.unit().make()), Yard.needs(LIGHTS, canopy));

        Concession concession = ranking.whatIf().concession(ranking.matches().get(0)).orElseThrow();

        assertEquals(canopy, ((Concession.Without) concession).dropped());
        assertEquals(Money.ofDollars(15200L), concession.price().middle());
    }

    @Test
    void readyWithinTheBudgetNothingHasToBeConceded() {
        Ranking ranking = rank(within(15200, LIGHTS), Yard.unit().make());

        assertEquals(Optional.empty(), ranking.whatIf().concession(ranking.matches().get(0)));
    }

    /** Without cab and power two units would do, without cab and seat only one. */
    @Test
    void pairThatBringsMostUnitsIsNamed() {
        Requirement seat = Yard.must(Yard.needs("seat"));
        Matcher matcher = new Yard().feature("factory-cab").feature("seat").feature("mid-pto").matcher();
        Unit one = Yard.unit().fitted("mid-pto").make("one");
        Unit two = Yard.unit().fitted("seat").make("two");
        Unit three = Yard.unit().fitted("seat").make("three");

        WhatIf.Pair pair = Ranking.of(matcher, List.of(one, two, three), Yard.needs(CAB, seat, PTO))
                .whatIf().pair(10, () -> false).orElseThrow();

        assertEquals(List.of(CAB, PTO), List.of(pair.dropped(), pair.alsoDropped()));
        assertEquals(List.of("three", "two"), ids(pair.gained()));
    }

    /** Lights go from 200 to 300 and the shaft from 700 to 1100, each for its own sake. */
    @Test
    void partOfThePlanIsWhatItCostsMoreThanWithoutSomeMustHavesAtEachEnd() {
        Matcher matcher = new Yard()
                .feature("lights")
                .addOn("light-kit", 0, List.of(Yard.gives("lights")), List.of())
                .priced("light-kit", Optional.empty(), Optional.of(PriceRange.ofDollars(200, 300)))
                .feature("mid-pto")
                .addOn("pto-kit", 0, List.of(Yard.gives("mid-pto")), List.of())
                .priced("pto-kit", Optional.empty(), Optional.of(PriceRange.ofDollars(700, 1100)))
                .matcher();
        Ranking ranking = Ranking.of(matcher, List.of(Yard.unit().make()), Yard.needs(LIGHTS, PTO));
        Match match = ranking.matches().get(0);

        assertEquals(
                Optional.of(PriceRange.ofDollars(700, 1100)), ranking.whatIf().partOfPlan(match, List.of(PTO)));
        assertEquals(
                Optional.of(PriceRange.ofDollars(900, 1400)),
                ranking.whatIf().partOfPlan(match, List.of(PTO, LIGHTS)));
        assertEquals(Optional.of(PriceRange.ZERO), ranking.whatIf().partOfPlan(match, List.of(CAB)));
    }

    /**
     * One kit for both from 1000 to 1200, or lights alone from 100 to 900: the low end rises by 900, the high by 300.
     * Where lights alone go from 400 to 1300, the high end would fall, and is no part of the plan.
     */
    @Test
    void partOfThePlanIsARangeThoughTheOtherPlanIsWiderAndNeverBelowNothing() {
        assertEquals(PriceRange.ofDollars(300, 900), part(PriceRange.ofDollars(100, 900)));
        assertEquals(PriceRange.ofDollars(0, 600), part(PriceRange.ofDollars(400, 1300)));
    }

    private static PriceRange part(PriceRange lightsAlone) {
        Matcher matcher = new Yard()
                .feature("lights")
                .feature("mid-pto")
                .addOn("light-kit", 0, List.of(Yard.gives("lights")), List.of())
                .priced("light-kit", Optional.empty(), Optional.of(lightsAlone))
                .addOn("both-kit", 0, List.of(Yard.gives("lights"), Yard.gives("mid-pto")), List.of())
                .priced("both-kit", Optional.empty(), Optional.of(PriceRange.ofDollars(1000, 1200)))
                .matcher();
        Ranking ranking = Ranking.of(matcher, List.of(Yard.unit().make()), Yard.needs(LIGHTS, PTO));
        return ranking.whatIf().partOfPlan(ranking.matches().get(0), List.of(PTO)).orElseThrow();
    }

    @Test
    void unitWithoutAPlanHasNoPartsOfOne() {
        Ranking ranking = rank(Yard.needs(CAB, LIGHTS), Yard.unit().make());

        assertEquals(Optional.empty(), ranking.whatIf().partOfPlan(ranking.matches().get(0), List.of(CAB)));
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void pairIsWhatRankingAgainWithoutBothShows(long seed) {
        var yards = new RandomYards(seed);
        int pairs = 0;
        for (int n = 0; n < 150; n++) {
            RandomYards.Case each = yards.next();
            Lot lot = new Matcher(each.catalogue()).lot(yards.units(3));
            Optional<WhatIf.Pair> pair = Ranking.of(lot, each.needs()).whatIf().pair(10, () -> false);
            if (pair.isPresent()) {
                pairs++;
                Needs without = each.needs().without(pair.get().dropped()).without(pair.get().alsoDropped());
                assertEquals(
                        Ranking.of(lot, without).ready().size(),
                        pair.get().gained().size(),
                        "seed " + seed + ", case " + n);
            }
        }
        assertTrue(pairs > 0, "seed " + seed + " gives no case where a pair helps; the test looks at nothing");
    }
}
