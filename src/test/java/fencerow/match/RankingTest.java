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
