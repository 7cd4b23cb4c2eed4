package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import fencerow.terms.UnitId;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class RankingTest {
    private static final Requirement CAB = Yard.must(Yard.needs("factory-cab"));
    private static final Requirement LIGHTS = Yard.must(Yard.needs("lights"));
    private static final Matcher MATCHER = new Yard()
            .feature("factory-cab")
            .feature("lights")
            .feature("soft-seat")
            .addOn("light-kit", 200, List.of(Yard.gives("lights")), List.of())
            .matcher();

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 3);
    }

    private static List<String> ids(Ranking ranking) {
        return ranking.matches().stream().map(match -> match.unit().id().value()).toList();
    }

    @Test
    void readyComesBeforeToBeEquippedBeforeNotReady() {
        Unit none = Yard.unit().make("a-none");
        Unit cab = Yard.unit().fitted("factory-cab").make("b-cab");
        Unit both = Yard.unit().fitted("factory-cab").fitted("lights").make("c-both");

        Ranking ranking = Ranking.of(MATCHER, List.of(none, cab, both), Yard.needs(CAB, LIGHTS));

        assertEquals(List.of("c-both", "b-cab", "a-none"), ids(ranking));
    }

    @Test
    void sameVerdictIsOrderedByWishesThenPriceThenId() {
        Unit dear = Yard.unit().make("a-plain");
        Unit lit = Yard.unit().fitted("lights").make("b-lit");
        Unit soft = Yard.unit().fitted("soft-seat").make("c-soft");
        Needs needs = Yard.needs(LIGHTS, Yard.wish(Yard.needs("soft-seat")));

        Ranking ranking = Ranking.of(MATCHER, List.of(dear, lit, soft), needs);

        assertEquals(List.of("b-lit", "c-soft", "a-plain"), ids(ranking));
    }

    @Test
    void droppingTheOneMustThatIsInTheWayIsNamedWithWhatItBrings() {
        Ranking ranking = Ranking.of(MATCHER, List.of(Yard.unit().make()), Yard.needs(CAB, LIGHTS));

        List<WhatIf.Change> changes = ranking.whatIf().changes();

        assertEquals(1, changes.size());
        assertEquals(CAB, changes.get(0).dropped());
        assertEquals(ranking.matches(), changes.get(0).gained());
        var concession = (Concession.Without) ranking.whatIf().concession(ranking.matches().get(0)).orElseThrow();
        assertEquals(CAB, concession.dropped());
        assertEquals(Money.ofDollars(15200L), concession.price().middle());
    }

    @Test
    void unitBeatenOnPriceAndWishesIsLabelled() {
        Unit plain = Yard.unit().make("plain");
        Unit better = Yard.unit().fitted("lights").fitted("soft-seat").make("better");
        Needs needs = Yard.needs(LIGHTS, Yard.wish(Yard.needs("soft-seat")));

        Ranking ranking = Ranking.of(MATCHER, List.of(plain, better), needs);

        assertEquals(Optional.empty(), ranking.beatenBy(ranking.matches().get(0)));
        assertEquals(Optional.of(ranking.matches().get(0)), ranking.beatenBy(ranking.matches().get(1)));
    }

    @Test
    void withinTheBudgetComesBeforeOverItThoughTheWishesAreMetOnlyThere() {
        Unit dear = Yard.unit().fitted("soft-seat").asking(20000).make("a-dear");
        Unit cheap = Yard.unit().make("b-cheap");
        Needs needs = new Needs(List.of(Yard.wish(Yard.needs("soft-seat"))), Set.of(), Set.of(),
                Optional.of(Money.ofDollars(16000L)), OptionalDouble.empty());

        assertEquals(List.of("b-cheap", "a-dear"), ids(Ranking.of(MATCHER, List.of(dear, cheap), needs)));
    }

    @Test
    void ofUnitsThatCannotBeMadeReadyTheOneThatMeetsMoreMustHavesComesFirst() {
        Unit cheap = Yard.unit().never("lights").asking(9000).make("a-neither");
        Unit lit = Yard.unit().fitted("lights").make("b-lit");
        Needs needs = Yard.needs(CAB, LIGHTS);

        Ranking ranking = Ranking.of(MATCHER, List.of(cheap, lit), needs);

        assertEquals(List.of("b-lit", "a-neither"), ids(ranking));
        assertEquals(List.of(), ranking.ready());
        assertEquals(Optional.empty(), ranking.cheapest());
    }

    @Test
    void cheapestIsTheLowestPriceOfUnitsThatCanBeMadeReady() {
        Unit never = Yard.unit().never("lights").asking(5000).make("a-never");
        Unit plain = Yard.unit().make("b-plain");
        Unit lit = Yard.unit().fitted("lights").asking(16000).make("c-lit");

        Ranking ranking = Ranking.of(MATCHER, List.of(never, plain, lit), Yard.needs(LIGHTS));

        assertEquals(Optional.of(Money.ofDollars(15200L)), ranking.cheapest());
    }

    @Test
    void unitIsBeatenByOneThatSuitsBetterForTheSameMoneyOrAsWellForLess() {
        Unit plain = Yard.unit().make("a-plain");
        Unit soft = Yard.unit().fitted("soft-seat").make("b-soft");
        Unit cheap = Yard.unit().asking(14000).make("c-cheap");
        Unit alike = Yard.unit().make("d-alike");
        Needs needs = Yard.needs(Yard.wish(Yard.needs("soft-seat")));

        assertEquals(Optional.of("b-soft"), beating("a-plain", needs, plain, soft));
        assertEquals(Optional.of("c-cheap"), beating("a-plain", needs, plain, cheap));
        assertEquals(Optional.empty(), beating("b-soft", needs, soft, cheap));
        assertEquals(Optional.empty(), beating("c-cheap", needs, soft, cheap));
        assertEquals(Optional.empty(), beating("a-plain", needs, plain, alike));
        assertEquals(Optional.empty(), beating("d-alike", needs, plain, alike));
    }

    private static Optional<String> beating(String id, Needs needs, Unit... units) {
        Ranking ranking = Ranking.of(MATCHER, List.of(units), needs);
        Match match = ranking.matches().get(ids(ranking).indexOf(id));
        return ranking.beatenBy(match).map(m -> m.unit().id().value());
    }

    @Test
    void unitThatCannotBeMadeReadyIsNotSaidToBeBeaten() {
        Unit never = Yard.unit().never("lights").make("never");
        Unit lit = Yard.unit().fitted("lights").asking(9000).make("lit");

        assertEquals(Optional.empty(), beating("never", Yard.needs(LIGHTS), never, lit));
    }

    @Test
    void rankingForOtherNeedsIsMadeFromTheOneBefore() {
        Unit plain = Yard.unit().make("a-plain");
        Unit lit = Yard.unit().fitted("lights").make("b-lit");
        Lot lot = MATCHER.lot(List.of(plain, lit));

        Ranking next = Ranking.of(lot, Needs.NONE).next(lot, Yard.needs(LIGHTS));

        assertEquals(List.of("b-lit", "a-plain"), ids(next));
        assertEquals(Yard.needs(LIGHTS), next.needs());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void changesAreWhatRankingAgainWithoutTheMustShows(long seed) {
        var yards = new RandomYards(seed);
        for (int n = 0; n < 40; n++) {
            RandomYards.Case each = yards.next();
            List<Unit> units = yards.units(6);
            var matcher = new Matcher(each.catalogue());
            Ranking now = Ranking.of(matcher, units, each.needs());
            for (Requirement must : each.needs().musts()) {
                Ranking without = Ranking.of(matcher, units, each.needs().without(must));
                Optional<WhatIf.Change> change =
                        now.whatIf().changes().stream().filter(c -> c.dropped().equals(must)).findFirst();
                Set<UnitId> gained = new HashSet<>(readyIds(without));
                gained.removeAll(readyIds(now));
                String where = "seed " + seed + ", case " + n + ", " + must.id();
                assertEquals(gained, change.map(RankingTest::gainedIds).orElse(Set.of()), where);
                Optional<Money> fall = now.cheapest()
                        .flatMap(before -> without.cheapest().map(before::minus))
                        .filter(money -> money.cents() > 0);
                assertEquals(fall, change.flatMap(WhatIf.Change::saves), where);
            }
        }
    }

    private static Set<UnitId> readyIds(Ranking ranking) {
        return ids(ranking.ready(), match -> match.unit().id());
    }

    private static Set<UnitId> gainedIds(WhatIf.Change change) {
        return ids(change.gained(), match -> match.unit().id());
    }

    private static Set<UnitId> ids(List<Match> matches, Function<Match, UnitId> id) {
        return matches.stream().map(id).collect(Collectors.toSet());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void orderNeverRisesInVerdictNorInPriceAmongEquals(long seed) {
        var yards = new RandomYards(seed);
        for (int n = 0; n < 40; n++) {
            RandomYards.Case each = yards.next();
            List<Match> matches = Ranking.of(new Matcher(each.catalogue()), yards.units(8), each.needs()).matches();
            for (int i = 1; i < matches.size(); i++) {
                Match before = matches.get(i - 1);
                Match after = matches.get(i);
                String where = "seed " + seed + ", case " + n + ", place " + i;
                assertTrue(before.verdict().compareTo(after.verdict()) <= 0, where);
                boolean sameScore = before.verdict() == after.verdict()
                        && before.score().percent() == after.score().percent()
                        && before.score().mustsMet() == after.score().mustsMet();
                assertTrue(!sameScore || before.price().middle().compareTo(after.price().middle()) <= 0, where);
            }
        }
    }
}
