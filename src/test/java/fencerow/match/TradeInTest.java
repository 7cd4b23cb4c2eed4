package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Needs;
import fencerow.stock.AskingPrice;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is allowed for a trade-in lowers what is paid; among units that allow the same it moves none before another. */
class TradeInTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 20);
    }

    private static Unit priced(Unit unit, AskingPrice price) {
        return new Unit(unit.id(), unit.model(), unit.condition(), unit.year(), unit.hours(), unit.availability(),
                unit.leadDays(), price, unit.facts(), unit.bundled(), unit.catchUp());
    }

    private static List<Unit> units(RandomYards yards, Random random, boolean ownTrades) {
        List<Unit> units = new ArrayList<>();
        for (Unit unit : yards.units(8)) {
            units.add(priced(unit, new AskingPrice(cents(random, 3_000_000), Optional.empty(), cents(random, 90_000),
                    cents(random, 60_000), cents(random, 30_000),
                    ownTrades ? Optional.of(cents(random, 2_000_000)) : Optional.empty())));
        }
        return units;
    }

    private static Money cents(Random random, int below) {
        return new Money(random.nextInt(below));
    }

    private static List<String> ids(Ranking ranking) {
        return ranking.matches().stream().map(match -> match.unit().id().value()).toList();
    }

    private static Needs withBudget(Needs needs, Money budget) {
        return new Needs(
                needs.requirements(), needs.owned(), needs.hired(), Optional.of(budget), needs.hoursPerYear());
    }

    /** Paying less by an amount is having that much more to spend. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void allowedIsLikeMoreBudgetAndMovesNoUnitBeforeAnother(long seed) {
        Random random = new Random(seed);
        var yards = new RandomYards(seed);
        RandomYards.Case yard = yards.next();
        Lot lot = new Matcher(yard.catalogue()).lot(units(yards, random, false));
        Money trade = cents(random, 5_000_000);
        Money budget = cents(random, 3_000_000);

        Ranking traded = Ranking.of(lot.allowing(trade), withBudget(yard.needs(), budget));
        Ranking richer = Ranking.of(lot, withBudget(yard.needs(), budget.plus(trade)));

        assertEquals(ids(richer), ids(traded));
        for (int i = 0; i < traded.matches().size(); i++) {
            Match less = traded.matches().get(i);
            Match more = richer.matches().get(i);
            assertEquals(more.price().total().less(trade), less.price().total());
            assertEquals(more.price().beforeTrade(), less.price().beforeTrade());
            assertEquals(more.overBudget(), less.overBudget());
        }
    }

    /** Who sells from elsewhere makes an offer of their own. */
    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void aSellersOwnOfferStandsAgainstTheOneHere(long seed) {
        Random random = new Random(seed);
        var yards = new RandomYards(seed);
        RandomYards.Case yard = yards.next();
        for (Match match : Ranking.of(new Matcher(yard.catalogue()).lot(units(yards, random, true))
                .allowing(Money.ofDollars(1234)), yard.needs()).matches()) {
            assertEquals(match.unit().price().trade(), Optional.of(match.price().trade()));
        }
    }

    @ParameterizedTest(name = "seed {0}")
    @MethodSource("seeds")
    void theLinesOfADifferenceAddUpToItExactly(long seed) {
        Random random = new Random(seed);
        var yards = new RandomYards(seed);
        RandomYards.Case yard = yards.next();
        List<Match> ready = Ranking.of(new Matcher(yard.catalogue()).lot(units(yards, random, true)), yard.needs())
                .ready();
        for (Match one : ready) {
            for (Match other : ready) {
                Difference found = Difference.of(one, other).orElseThrow();
                long sum = found.lines().stream().mapToLong(line -> line.more().cents()).sum();
                assertEquals(found.more().cents(), sum);
                double paid = one.price().middle().minus(other.price().middle()).toDollars();
                assertEquals(paid, found.more().toDollars(), 0.51);
                for (Difference.Line line : found.lines()) {
                    assertEquals(itself(line, one, other), line.more().toDollars(), 1.01, line.toString());
                    assertTrue(line.more().cents() != 0, line.toString());
                }
            }
        }
    }

    /** The line worked out by itself, unrounded. */
    private static double itself(Difference.Line line, Match one, Match other) {
        return switch (line.kind()) {
            case ASKING -> one.price().asking().asking().minus(other.price().asking().asking()).toDollars();
            case FREIGHT -> one.price().asking().freight().minus(other.price().asking().freight()).toDollars();
            case SETUP -> one.price().asking().setup().minus(other.price().asking().setup()).toDollars();
            case FEES -> one.price().asking().fees().minus(other.price().asking().fees()).toDollars();
            case CATCH_UP -> one.price().catchUp().middle().minus(other.price().catchUp().middle()).toDollars();
            case TRADE -> other.price().trade().minus(one.price().trade()).toDollars();
            case ITEM -> item(one, line) - item(other, line);
        };
    }

    private static double item(Match match, Difference.Line line) {
        return match.findPlan().orElseThrow().lines().stream()
                .filter(each -> Optional.of(each.item()).equals(line.item()))
                .mapToDouble(each -> each.price().middle().toDollars())
                .sum();
    }
}
