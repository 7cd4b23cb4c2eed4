package fencerow.match;

import static fencerow.match.Yard.atLeast;
import static fencerow.match.Yard.gives;
import static fencerow.match.Yard.must;
import static fencerow.match.Yard.needs;
import static fencerow.match.Yard.unit;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Fact;
import fencerow.terms.Figure;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** What a unit starts with and costs by itself, among others in one lot. */
class LotTest {
    private static final Requirement POWER =
            must(atLeast("pto-power", new Amount(Dimension.POWER, 15000), Yard.PARKED));

    private static List<Verdict> verdicts(Lot lot, Requirement... asked) {
        return Ranking.of(lot, needs(asked)).matches().stream().map(Match::verdict).toList();
    }

    private static Verdict verdict(Yard yard, Unit unit, Requirement... asked) {
        return yard.matcher().match(unit, needs(asked)).verdict();
    }

    @Test
    void unitsOfTwoModelsAreEachHeldAgainstTheirOwnSheet() {
        Unit weak = unit().figure(Figure.PTO_POWER, 12000).make("a-weak");
        Unit strong = unit().figure(Figure.PTO_POWER, 18000).make("b-strong");

        List<Match> matches = new Yard().matcher().match(List.of(weak, strong), needs(POWER));

        assertEquals(
                List.of(Verdict.CANNOT_BE_MADE_READY, Verdict.READY), matches.stream().map(Match::verdict).toList());
    }

    @Test
    void unitsOfOneModelAreEachHeldAgainstWhatIsKnownOfThem() {
        Yard yard = new Yard().feature("lights");
        Unit dark = unit().make("a-dark");
        Unit lit = unit().like(dark).fitted("lights").make("b-lit");
        Unit ordered = unit().like(dark).fitted("lights").orderable().make("c-ordered");

        assertEquals(
                List.of(Verdict.READY, Verdict.TO_ORDER, Verdict.CANNOT_BE_MADE_READY),
                verdicts(yard.matcher().lot(List.of(dark, lit, ordered)), must(needs("lights"))));
    }

    @Test
    void unitAddedToALotIsRankedWithTheOthersAndWithTheSameTradeIn() {
        Unit weak = unit().figure(Figure.PTO_POWER, 12000).make("a-weak");
        Unit strong = unit().figure(Figure.PTO_POWER, 18000).make("b-strong");
        Lot lot = new Yard().matcher().lot(List.of(weak)).allowing(Money.ofDollars(4000L)).with(strong);

        Ranking ranking = Ranking.of(lot, needs(POWER));

        assertEquals(List.of(weak, strong), lot.units());
        assertEquals(List.of(strong, weak), ranking.matches().stream().map(Match::unit).toList());
        assertEquals(Money.ofDollars(11000L), ranking.matches().get(0).price().middle());
    }

    @Test
    void puttingRightWhatIsNotedIsPartOfTheReadyPriceAndNotOfThePlan() {
        Yard yard = new Yard().catchUp("worn-tires", 400, 600).catchUp("leaking-seal", 150, 250);

        Match match = yard.matcher()
                .match(unit().worn("worn-tires").worn("leaking-seal").worn("no-price-for-this").make(), needs());

        assertEquals(PriceRange.ofDollars(550, 850), match.price().catchUp());
        assertEquals(PriceRange.ZERO, match.price().plan());
        assertEquals(Money.ofDollars(15700L), match.price().middle());
        assertEquals(Verdict.READY, match.verdict());
    }

    /** 500 in the middle for tires on the one, 200 for lamps on the other, which is asked for at 300 less. */
    @Test
    void whatIsNotedOnTheOneIsALineOfTheDifferenceFromTheOther() {
        Yard yard = new Yard()
                .catchUp("worn-tires", 400, 600)
                .feature("lights")
                .addOn("light-kit", 200, List.of(gives("lights")), List.of());
        Match worn = yard.matcher()
                .match(unit().fitted("lights").worn("worn-tires").make(), needs(must(needs("lights"))));
        Match dark = yard.matcher().match(unit().asking(14700).make(), needs(must(needs("lights"))));

        Difference difference = Difference.of(worn, dark).orElseThrow();

        assertEquals(Money.ofDollars(600L), difference.more());
        assertEquals(
                List.of(
                        new Difference.Line(Difference.Kind.ASKING, Optional.empty(), Money.ofDollars(300L)),
                        new Difference.Line(
                                Difference.Kind.ITEM,
                                Optional.of(new ItemId("light-kit")),
                                Money.ofDollars(-200L)),
                        new Difference.Line(Difference.Kind.CATCH_UP, Optional.empty(), Money.ofDollars(500L))),
                difference.lines());
    }

    @Test
    void betweenUnitsOfWhichOneCannotBeMadeReadyThereIsNoDifference() {
        Yard yard = new Yard().feature("lights");
        Match lit = yard.matcher().match(unit().fitted("lights").make(), needs(must(needs("lights"))));
        Match dark = yard.matcher().match(unit().make(), needs(must(needs("lights"))));

        assertEquals(Optional.empty(), Difference.of(lit, dark));
        assertEquals(Optional.empty(), Difference.of(dark, lit));
    }

    /** Front axle and rear axle together. */
    @Test
    void capabilityStartsFromTheSheetsFiguresItIsMadeOf() {
        Yard yard = new Yard().sum("bare-mass", Dimension.MASS, Figure.FRONT_AXLE_MASS, Figure.REAR_AXLE_MASS);
        Unit unit = unit().figure(Figure.FRONT_AXLE_MASS, 400).figure(Figure.REAR_AXLE_MASS, 600).make();

        assertEquals(
                Verdict.READY,
                verdict(yard, unit, must(atLeast("bare-mass", new Amount(Dimension.MASS, 1000), Yard.PARKED))));
        assertEquals(
                Verdict.CANNOT_BE_MADE_READY,
                verdict(yard, unit, must(atLeast("bare-mass", new Amount(Dimension.MASS, 1001), Yard.PARKED))));
    }

    @Test
    void onlyAMachineNobodyHasOwnedIsANewOne() {
        Requirement asNew = must(needs("new-machine"));

        assertEquals(Verdict.READY, verdict(new Yard(), unit().asNew().make(), asNew));
        assertEquals(Verdict.CANNOT_BE_MADE_READY, verdict(new Yard(), unit().make(), asNew));
        assertEquals(
                Verdict.CANNOT_BE_MADE_READY,
                verdict(new Yard().feature("lights"), unit().asNew().make(), must(needs("lights"))));
    }

    @Test
    void supplyThatEveryTractorHasIsThereBeforeAnythingIsFitted() {
        Yard yard = new Yard().shared("port-block");

        assertEquals(
                Verdict.READY, verdict(yard, unit().make(), must(atLeast("port-block", Amount.count(1), Yard.PARKED))));
        assertEquals(
                Verdict.CANNOT_BE_MADE_READY,
                verdict(yard, unit().make(), must(atLeast("port-block", Amount.count(2), Yard.PARKED))));
    }

    @Test
    void oneKindOfAFeatureIsNotAnother() {
        Yard yard = new Yard().kinds("quick-attach", "plate", "pins");
        Unit unit = unit().known("quick-attach", new Fact.Fitted(1, Optional.of("plate"))).make();

        assertEquals(Verdict.READY, verdict(yard, unit, must(needs("quick-attach.plate"))));
        assertEquals(Verdict.READY, verdict(yard, unit, must(needs("quick-attach"))));
        assertEquals(Verdict.CANNOT_BE_MADE_READY, verdict(yard, unit, must(needs("quick-attach.pins"))));
    }

    @Test
    void severalPiecesOfAFeatureDoSeveralTimesWhatOneDoes() {
        Yard yard = new Yard().feature("rear-remotes", gives("outlets"), gives("outlets"));
        Unit unit = unit().known("rear-remotes", new Fact.Fitted(2, Optional.empty())).make();

        assertEquals(Verdict.READY, verdict(yard, unit, must(atLeast("outlets", Amount.count(4), Yard.PARKED))));
        assertEquals(
                Verdict.CANNOT_BE_MADE_READY,
                verdict(yard, unit, must(atLeast("outlets", Amount.count(5), Yard.PARKED))));
    }
}
