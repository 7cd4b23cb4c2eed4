package fencerow.match;

import static fencerow.match.Yard.atLeast;
import static fencerow.match.Yard.atMost;
import static fencerow.match.Yard.gives;
import static fencerow.match.Yard.kilograms;
import static fencerow.match.Yard.metres;
import static fencerow.match.Yard.must;
import static fencerow.match.Yard.needs;
import static fencerow.match.Yard.takes;
import static fencerow.match.Yard.unit;
import static fencerow.match.Yard.wish;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Fitter;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What the matcher says, one trade situation at a time. Prices and machines are made up; the rules are the trade's. */
class MatcherTest {
    private static final Requirement FORKS_WORK = must(needs("does:move-pallets"));

    /** Forks need a quick coupler and weight behind; both can be bought. */
    private static Yard forkYard() {
        return new Yard()
                .feature("quick-attach")
                .sum("hitch-weight", Dimension.MASS)
                .addOn("quick-attach-kit", 900, List.of(gives("quick-attach")), List.of())
                .addOn("ballast-box", 500, List.of(kilograms("hitch-weight", 300, Yard.LOADER_WORK)), List.of())
                .attachment("forks", 1000, "move-pallets", Yard.LOADER_WORK, List.of(), List.of(
                        needs("quick-attach"),
                        atLeast("hitch-weight", new Amount(Dimension.MASS, 200), Yard.LOADER_WORK)));
    }

    private static List<String> items(Match match) {
        return match.findPlan().orElseThrow().lines().stream().map(line -> line.item().value()).toList();
    }

    private static Finding.Infeasible infeasible(Match match) {
        return (Finding.Infeasible) match.finding();
    }

    @Test
    void attachmentBringsWhatItNeeds() {
        Match match = forkYard().matcher().match(unit().make(), needs(FORKS_WORK));

        assertEquals(Verdict.READY_ONCE_EQUIPPED, match.verdict());
        assertEquals(List.of("quick-attach-kit", "ballast-box", "forks"), items(match));
        assertEquals(Money.ofDollars(15000L + 2400), match.price().middle());
    }

    @Test
    void bundledAttachmentsAreOwnedAtNoPrice() {
        Unit unit = unit().fitted("quick-attach").bundled("forks").bundled("ballast-box").make();

        assertEquals(Verdict.READY, forkYard().matcher().match(unit, needs(FORKS_WORK)).verdict());
    }

    @Test
    void ownedAttachmentIsFreeButStillHasToFit() {
        Needs needs = new Needs(
                List.of(FORKS_WORK), Set.of(new ItemId("forks")), Set.of(), Optional.empty(), OptionalDouble.empty());

        Match match = forkYard().matcher().match(unit().make(), needs);

        assertEquals(Money.ofDollars(1400L), match.findPlan().orElseThrow().price().middle());
    }

    @Test
    void neverOnModelIsNamedAsTheTrueCauseOfAJobThatCannotBeDone() {
        Yard yard = new Yard()
                .feature("mid-pto")
                .addOn("mid-pto-kit", 900, List.of(gives("mid-pto")), List.of())
                .attachment("front-blower", 6000, "clear-snow", Yard.LOADER_WORK, List.of(), List.of(needs("mid-pto")));
        Unit unit = unit().never("mid-pto").make();

        Match match = yard.matcher().match(unit, needs(must(needs("does:clear-snow"))));

        assertEquals(Verdict.CANNOT_BE_MADE_READY, match.verdict());
        assertEquals(
                List.of(new Blocked(
                        Optional.of(new ItemId("front-blower")),
                        new CapabilityId("mid-pto"),
                        Blocked.Rule.NEVER_ON_MODEL,
                        Optional.empty(),
                        Optional.empty())),
                infeasible(match).why());
    }

    @Test
    void tooLittlePowerIsNamedWithBothNumbers() {
        Yard yard = new Yard().attachment("chipper", 4000, "chip-brush", Yard.LOADER_WORK, List.of(), List.of(
                atLeast("pto-power", new Amount(Dimension.POWER, 15000), Yard.LOADER_WORK)));
        Unit unit = unit().figure(Figure.PTO_POWER, 12000).make();

        Match match = yard.matcher().match(unit, needs(must(needs("does:chip-brush"))));

        Blocked blocked = infeasible(match).why().get(0);
        assertEquals(Blocked.Rule.TOO_LITTLE, blocked.rule());
        assertEquals(Optional.of(new Amount(Dimension.POWER, 15000)), blocked.wanted());
        assertEquals(Optional.of(new Amount(Dimension.POWER, 12000)), blocked.available());
        assertEquals(Optional.of(Yard.LOADER_WORK), blocked.in());
    }

    @Test
    void uncheckedEquipmentCountsAsAbsentAndIsMarkedWithWhatItWouldSave() {
        Unit unit = unit().unverified("quick-attach").make();

        Match match = forkYard().matcher().match(unit, needs(FORKS_WORK));

        assertEquals(Verdict.READY_ONCE_EQUIPPED, match.verdict());
        assertEquals(Money.ofDollars(2400L), match.findPlan().orElseThrow().price().middle());
        assertEquals(Money.ofDollars(900L), match.verify().get(0).saves().high());
    }

    @Test
    void uncheckedEquipmentThatNobodyCanAddDecidesTheVerdict() {
        Yard yard = new Yard().feature("four-wheel-drive");
        Unit unit = unit().unverified("four-wheel-drive").make();

        Match match = yard.matcher().match(unit, needs(must(needs("four-wheel-drive"))));

        assertEquals(Verdict.LOOK_CLOSER, match.verdict());
        assertTrue(match.verify().get(0).flips());
    }

    @Test
    void uncheckedCabUnderALowDoorIsTakenAsPresent() {
        Yard yard = new Yard().feature("factory-cab", metres("height", 0.25));
        Unit unit = unit().figure(Figure.HEIGHT, 2.0).unverified("factory-cab").make();

        Match match = yard.matcher()
                .match(unit, needs(must(atMost("height", new Amount(Dimension.LENGTH, 2.1), Yard.PARKED))));

        assertEquals(Verdict.LOOK_CLOSER, match.verdict());
        assertEquals(Blocked.Rule.TOO_MUCH, infeasible(match).why().get(0).rule());
    }

    @Test
    void whatIsThereAndRulesTheOnlyHelpOutIsNamedAsInTheWay() {
        Yard yard = new Yard()
                .feature("factory-cab")
                .sum("heated", Dimension.COUNT)
                .addOn("soft-cab", 3000, List.of(gives("heated")), List.of(
                        atMost("factory-cab", Amount.count(0), Yard.PARKED)));

        Match match = yard.matcher().match(unit().fitted("factory-cab").make(), needs(must(needs("heated"))));

        assertEquals(
                List.of(new Blocked(
                        Optional.of(new ItemId("soft-cab")),
                        new CapabilityId("factory-cab"),
                        Blocked.Rule.IN_THE_WAY,
                        Optional.empty(),
                        Optional.empty(),
                        Optional.of(Yard.PARKED))),
                infeasible(match).why());
    }

    @Test
    void sameAskedInTwoWorkingStatesIsOneMustHaveAndTheWorstStateDecides() {
        Yard yard = new Yard()
                .sum("lift", Dimension.MASS)
                .addOn("arms", 2000, List.of(
                        kilograms("lift", 400, Yard.LOADER_WORK), kilograms("lift", 300, Yard.PARKED)), List.of());
        Requirement lift = must(atLeast("lift", new Amount(Dimension.MASS, 350), Yard.LOADER_WORK));
        var both = new Requirement(lift.id(),
                List.of(lift.demand(), atLeast("lift", new Amount(Dimension.MASS, 350), Yard.PARKED)),
                true, 1, lift.why());

        Match match = yard.matcher().match(unit().make(), needs(both));

        assertEquals(Verdict.READY_ONCE_EQUIPPED, yard.matcher().match(unit().make(), needs(lift)).verdict());
        assertEquals(Verdict.CANNOT_BE_MADE_READY, match.verdict());
        assertEquals(1, match.score().mustsAll());
        assertEquals(0, match.score().mustsMet());
        assertEquals(List.of(both), infeasible(match).irreducible());
        assertEquals(Optional.of(new Amount(Dimension.MASS, 300)), infeasible(match).why().get(0).available());
    }

    @Test
    void factoryOnlyFeatureComesOnlyWithAnOrder() {
        Yard yard = new Yard()
                .feature("factory-cab")
                .addOn("cab-order", 1, OptionalInt.empty(), Fitter.FACTORY, 9000,
                        List.of(gives("factory-cab")), List.of());
        Needs cab = needs(must(needs("factory-cab")));

        Match inStock = yard.matcher().match(unit().factoryOnly("factory-cab").make(), cab);
        Match ordered = yard.matcher().match(unit().factoryOnly("factory-cab").orderable().make(), cab);

        assertEquals(Blocked.Rule.FACTORY_ONLY, infeasible(inStock).why().get(0).rule());
        assertEquals(Verdict.TO_ORDER, ordered.verdict());
        assertEquals(List.of("cab-order"), items(ordered));
    }

    @Test
    void sharedPortBlockServesOnlyOneOfTwo() {
        Yard yard = new Yard()
                .shared("port-block")
                .feature("power-beyond")
                .feature("rear-remotes")
                .addOn("power-beyond-kit", 500, List.of(gives("power-beyond"), takes("port-block")), List.of())
                .addOn("remote-kit", 900, List.of(gives("rear-remotes"), takes("port-block")), List.of());

        Match match = yard.matcher()
                .match(unit().make(), needs(must(needs("power-beyond")), must(needs("rear-remotes"))));

        assertEquals(Verdict.CANNOT_BE_MADE_READY, match.verdict());
        assertEquals(2, infeasible(match).irreducible().size());
        assertTrue(infeasible(match).why().stream().allMatch(b -> b.rule() == Blocked.Rule.NOT_TOGETHER));
        assertEquals(1, match.score().mustsMet());
    }

    @Test
    void secondPortBlockLetsBothHaveTheirOil() {
        Yard yard = new Yard()
                .shared("port-block")
                .feature("power-beyond")
                .feature("rear-remotes")
                .addOn("power-beyond-kit", 500, List.of(gives("power-beyond"), takes("port-block")), List.of())
                .addOn("remote-kit", 900, List.of(gives("rear-remotes"), takes("port-block")), List.of())
                .addOn("second-port-block", 300, List.of(gives("port-block")), List.of());

        Match match = yard.matcher()
                .match(unit().make(), needs(must(needs("power-beyond")), must(needs("rear-remotes"))));

        assertEquals(List.of("power-beyond-kit", "remote-kit", "second-port-block"), items(match));
    }

    @Test
    void widthOfAFeatureAndOfTheToolThatBringsItAreNotAddedUp() {
        Yard yard = new Yard()
                .best("mowing-width", Dimension.LENGTH)
                .feature("mower-deck", metres("mowing-width", 1.2))
                .attachment("deck-60", 3500, "mow-lawn", Yard.PARKED,
                        List.of(gives("mower-deck"), metres("mowing-width", 1.5)), List.of());
        Requirement wider = must(atLeast("mowing-width", new Amount(Dimension.LENGTH, 1.8), Yard.PARKED));

        assertEquals(Verdict.CANNOT_BE_MADE_READY, yard.matcher().match(unit().make(), needs(wider)).verdict());
    }

    @Test
    void modelLimitBoundsHowManyRemotesCanEverBeThere() {
        Yard yard = new Yard()
                .feature("rear-remotes")
                .addOn("remote-kit", 4, OptionalInt.empty(), Fitter.BRAND_DEALER, 600,
                        List.of(gives("rear-remotes")), List.of());
        Needs three = needs(must(atLeast("rear-remotes", Amount.count(3), Yard.LOADER_WORK)));

        assertEquals(
                Verdict.READY_ONCE_EQUIPPED,
                yard.matcher().match(unit().limit("rear-remotes", 3).make(), three).verdict());
        assertEquals(
                Verdict.CANNOT_BE_MADE_READY,
                yard.matcher().match(unit().limit("rear-remotes", 2).make(), three).verdict());
    }

    @Test
    void stopgapIsUsedWithTheBetterPlanBesideIt() {
        Yard yard = new Yard()
                .sum("loader-circuit", Dimension.COUNT)
                .addOn("diverter", 1, OptionalInt.of(20), Fitter.OWNER, 500,
                        List.of(gives("loader-circuit")), List.of())
                .addOn("third-function", 1500, List.of(gives("loader-circuit")), List.of());

        Match match = yard.matcher().match(unit().make(), needs(must(needs("loader-circuit"))));

        var feasible = (Finding.Feasible) match.finding();
        assertEquals(Money.ofDollars(500L), feasible.best().price().middle());
        assertEquals(Money.ofDollars(1500L), feasible.withoutStopgap().orElseThrow().price().middle());
    }

    @Test
    void stopgapIsNotOfferedForMoreHoursThanItIsGoodFor() {
        Yard yard = new Yard()
                .sum("loader-circuit", Dimension.COUNT)
                .addOn("diverter", 1, OptionalInt.of(20), Fitter.OWNER, 500,
                        List.of(gives("loader-circuit")), List.of());
        Needs busy = new Needs(
                List.of(must(needs("loader-circuit"))), Set.of(), Set.of(), Optional.empty(), OptionalDouble.of(80));

        Match match = yard.matcher().match(unit().make(), busy);

        assertEquals(Blocked.Rule.TOO_MANY_HOURS, infeasible(match).why().get(0).rule());
    }

    @Test
    void bestSingleWidthCountsWhereWidthsDoNotAddUp() {
        Yard yard = new Yard()
                .best("mowing-width", Dimension.LENGTH)
                .attachment("deck-48", 2500, "mow-lawn", Yard.PARKED, List.of(metres("mowing-width", 1.2)), List.of())
                .attachment("deck-60", 3500, "mow-lawn", Yard.PARKED, List.of(metres("mowing-width", 1.5)), List.of());
        Requirement wide = must(atLeast("mowing-width", new Amount(Dimension.LENGTH, 1.4), Yard.PARKED));

        Match match = yard.matcher().match(unit().make(), needs(must(needs("does:mow-lawn")), wide));

        assertEquals(List.of("deck-60"), items(match));
    }

    @Test
    void overBudgetIsAMarkAndNoCauseOfRefusal() {
        Needs tight = new Needs(
                List.of(FORKS_WORK),
                Set.of(),
                Set.of(),
                Optional.of(Money.ofDollars(16000L)),
                OptionalDouble.empty());

        Match match = forkYard().matcher().match(unit().make(), tight);

        assertEquals(Verdict.READY_ONCE_EQUIPPED, match.verdict());
        assertEquals(Optional.of(Money.ofDollars(1400L)), match.overBudget());
    }

    @Test
    void scoreIsTheShareOfWishesMetAsTheUnitStands() {
        Yard yard = new Yard().feature("canopy").feature("lights");

        Match match = yard.matcher()
                .match(unit().fitted("lights").make(), needs(wish(needs("canopy")), wish(needs("lights"))));

        assertEquals(50, match.score().percent());
        assertEquals(Verdict.READY, match.verdict());
    }
}
