package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.Money;
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
