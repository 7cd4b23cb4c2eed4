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
import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Requirement;
import fencerow.stock.Fitter;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Which causes are told where a unit cannot be made ready, in which order, and with which numbers. */
class CausesTest {
    private static final Requirement SNOW = must(needs("does:clear-snow"));

    private static Finding.Infeasible infeasible(Yard yard, Unit unit, Requirement... musts) {
        return (Finding.Infeasible) yard.matcher().match(unit, needs(musts)).finding();
    }

    private static List<Blocked> why(Yard yard, Unit unit, Requirement... musts) {
        return infeasible(yard, unit, musts).why();
    }

    private static Blocked flag(String item, String of, Blocked.Rule rule) {
        return new Blocked(
                Optional.of(new ItemId(item)), new CapabilityId(of), rule, Optional.empty(), Optional.empty());
    }

    private static Blocked flag(String of, Blocked.Rule rule) {
        return new Blocked(Optional.empty(), new CapabilityId(of), rule, Optional.empty(), Optional.empty());
    }

    private static Amount watts(double watts) {
        return new Amount(Dimension.POWER, watts);
    }

    private static Amount kg(double kilograms) {
        return new Amount(Dimension.MASS, kilograms);
    }

    private static Demand power(double watts) {
        return atLeast("pto-power", watts(watts), Yard.LOADER_WORK);
    }

    private static Yard tool(Yard yard, String id, Demand... needs) {
        return yard.attachment(id, 4000, "clear-snow", Yard.LOADER_WORK, List.of(), List.of(needs));
    }

    @Test
    void causeInMostItemsWayComesFirst() {
        Yard yard = new Yard().feature("front-pto").feature("rear-pto");
        tool(yard, "front-blower", needs("front-pto"));
        tool(yard, "rear-blower", needs("rear-pto"));
        tool(yard, "rear-sweeper", needs("rear-pto"));

        assertEquals(
                List.of(
                        flag("rear-blower", "rear-pto", Blocked.Rule.CANNOT_BE_ADDED),
                        flag("front-blower", "front-pto", Blocked.Rule.CANNOT_BE_ADDED)),
                why(yard, unit().make(), SNOW));
    }

    @Test
    void ofSeveralItemsShortOfTheSameTheOneThatComesNearestIsTold() {
        Yard yard = new Yard();
        tool(yard, "large-blower", power(20000));
        tool(yard, "small-blower", power(14000));

        assertEquals(
                List.of(new Blocked(
                        Optional.of(new ItemId("small-blower")),
                        new CapabilityId("pto-power"),
                        Blocked.Rule.TOO_LITTLE,
                        Optional.of(watts(14000)),
                        Optional.of(watts(12000)),
                        Optional.of(Yard.LOADER_WORK))),
                why(yard, unit().figure(Figure.PTO_POWER, 12000).make(), SNOW));
    }

    /** 10 kg are missing for the pusher at work, 100 kg for the lighter blade on the parked machine. */
    @Test
    void nearestIsWhatIsShortByLeastAndNotWhatAsksForLeast() {
        Yard yard = new Yard()
                .sum("grip", Dimension.MASS)
                .feature("chains", kilograms("grip", 340, Yard.LOADER_WORK), kilograms("grip", 200, Yard.PARKED));
        tool(yard, "blade", atLeast("grip", kg(300), Yard.PARKED));
        tool(yard, "pusher", atLeast("grip", kg(350), Yard.LOADER_WORK));

        List<Blocked> why = why(yard, unit().fitted("chains").make(), SNOW);

        assertEquals(1, why.size());
        assertEquals(Optional.of(new ItemId("pusher")), why.get(0).item());
        assertEquals(Optional.of(kg(340)), why.get(0).available());
    }

    @Test
    void whatIsMadeForOtherMachinesIsToldOnlyWhereNothingElseIsInTheWay() {
        Yard others = new Yard()
                .feature("canopy")
                .addOn("tall-canopy", 700, List.of(gives("canopy")), List.of())
                .madeFor("tall-canopy", MachineClass.UTILITY);
        Yard both = new Yard()
                .feature("canopy")
                .feature("roll-bar")
                .addOn("tall-canopy", 700, List.of(gives("canopy")), List.of())
                .addOn("canopy-kit", 900, List.of(gives("canopy")), List.of(needs("roll-bar")))
                .madeFor("tall-canopy", MachineClass.UTILITY);
        Requirement canopy = must(needs("canopy"));

        assertEquals(
                List.of(flag("tall-canopy", "canopy", Blocked.Rule.NOT_FOR_CLASS)),
                why(others, unit().make(), canopy));
        assertEquals(
                List.of(flag("canopy-kit", "roll-bar", Blocked.Rule.CANNOT_BE_ADDED)),
                why(both, unit().make(), canopy));
    }

    @Test
    void whatNothingOnSaleAddsIsNamedByItselfAndWithoutNumbers() {
        Yard yard = new Yard().feature("four-wheel-drive");
        Requirement driven = must(needs("four-wheel-drive"));

        assertEquals(
                List.of(flag("four-wheel-drive", Blocked.Rule.CANNOT_BE_ADDED)), why(yard, unit().make(), driven));
        assertEquals(
                List.of(flag("four-wheel-drive", Blocked.Rule.NEVER_ON_MODEL)),
                why(yard, unit().never("four-wheel-drive").make(), driven));
        assertEquals(
                List.of(flag("four-wheel-drive", Blocked.Rule.FACTORY_ONLY)),
                why(yard, unit().factoryOnly("four-wheel-drive").make(), driven));
    }

    @Test
    void whatTheCatalogueNeverSpeaksOfCannotBeAdded() {
        assertEquals(
                List.of(flag("does:shear-sheep", Blocked.Rule.CANNOT_BE_ADDED)),
                why(new Yard().feature("canopy"), unit().make(), must(needs("does:shear-sheep"))));
    }

    /** One is there and the kit can be fitted four times: five of the six. */
    @Test
    void whereSomeCanBeAddedAndNotEnoughBothCountsAreTold() {
        Yard yard = new Yard()
                .feature("rear-remotes")
                .addOn("remote-kit", 4, OptionalInt.empty(), Fitter.BRAND_DEALER, 600,
                        List.of(gives("rear-remotes")), List.of());

        assertEquals(
                List.of(new Blocked(
                        Optional.empty(),
                        new CapabilityId("rear-remotes"),
                        Blocked.Rule.TOO_LITTLE,
                        Optional.of(Amount.count(6)),
                        Optional.of(Amount.count(5)),
                        Optional.of(Yard.LOADER_WORK))),
                why(yard, unit().fitted("rear-remotes").make(),
                        must(atLeast("rear-remotes", Amount.count(6), Yard.LOADER_WORK))));
    }

    @Test
    void figureOfWhichThereIsNothingIsTooLittleOfIt() {
        Blocked blocked = why(tool(new Yard(), "blower", power(15000)), unit().make(), SNOW).get(0);

        assertEquals(Blocked.Rule.TOO_LITTLE, blocked.rule());
        assertEquals(Optional.of(watts(0)), blocked.available());
    }

    @Test
    void needsThatAreMetAreNotToldBesideTheOneThatIsNot() {
        Yard yard = new Yard()
                .feature("rear-pto")
                .feature("quick-attach")
                .feature("front-pto")
                .addOn("quick-attach-kit", 900, List.of(gives("quick-attach")), List.of());
        tool(yard, "blower", needs("rear-pto"), needs("quick-attach"), needs("front-pto"));

        assertEquals(
                List.of(flag("blower", "front-pto", Blocked.Rule.CANNOT_BE_ADDED)),
                why(yard, unit().fitted("rear-pto").make(), SNOW));
    }

    @Test
    void workingStateInWhichAMustHaveHoldsIsNotTold() {
        Yard yard = new Yard()
                .sum("lift", Dimension.MASS)
                .feature("arms", kilograms("lift", 400, Yard.PARKED), kilograms("lift", 200, Yard.LOADER_WORK));
        Requirement parked = must(atLeast("lift", kg(350), Yard.PARKED));
        var both = new Requirement(parked.id(),
                List.of(parked.demand(), atLeast("lift", kg(350), Yard.LOADER_WORK)), true, 1, parked.why());

        List<Blocked> why = why(yard, unit().fitted("arms").make(), both);

        assertEquals(1, why.size());
        assertEquals(Optional.of(Yard.LOADER_WORK), why.get(0).in());
    }

    @Test
    void mustHavesThatOnlyExcludeEachOtherAreNamedAsNotTogetherHoweverLongTheChainToThem() {
        Yard yard = new Yard()
                .feature("quick-attach")
                .addOn("quick-attach-kit", 900, List.of(gives("quick-attach")), List.of())
                .attachment("forks", 1000, "move-pallets", Yard.LOADER_WORK, List.of(), List.of(needs("quick-attach")))
                .shared("port-block")
                .addOn("fork-oil", 300, List.of(gives("tilt"), takes("port-block")),
                        List.of(needs("does:move-pallets")))
                .addOn("blower-oil", 300, List.of(gives("spout"), takes("port-block")), List.of(needs("quick-attach")));

        Finding.Infeasible both = infeasible(yard, unit().make(), must(needs("tilt")), must(needs("spout")));

        assertEquals(2, both.irreducible().size());
        assertEquals(
                List.of(flag("tilt", Blocked.Rule.NOT_TOGETHER), flag("spout", Blocked.Rule.NOT_TOGETHER)),
                both.why());
    }

    @Test
    void ofSeveralMustHavesTheOneThatFailsIsTheOneExplained() {
        Yard yard = new Yard()
                .feature("lights")
                .feature("factory-cab")
                .addOn("light-kit", 200, List.of(gives("lights")), List.of());
        Requirement cab = must(needs("factory-cab"));

        Finding.Infeasible found = infeasible(yard, unit().make(), must(needs("lights")), cab);

        assertEquals(List.of(cab), found.irreducible());
        assertEquals(List.of(flag("factory-cab", Blocked.Rule.CANNOT_BE_ADDED)), found.why());
    }

    /**
     * Nobody looked for the bar of lamps. With it there is light and no room on the roof; without it there is room for
     * the kit. In neither case is there neither light nor room.
     */
    @Test
    void causesAreThoseOfOneWayItMayTurnOutAndNotOfTheWorstOfEach() {
        Yard yard = new Yard()
                .sum("work-light", Dimension.COUNT)
                .sum("roof-room", Dimension.COUNT)
                .feature("roof", gives("roof-room"))
                .feature("light-bar", gives("work-light"), takes("roof-room"))
                .addOn("light-kit", 200, List.of(gives("work-light")), List.of(needs("roof-room")))
                .addOn("beacon-kit", 100, List.of(gives("beacon")), List.of(), "light-kit");

        Finding.Infeasible found = infeasible(yard, unit().fitted("roof").unverified("light-bar").make(),
                must(needs("work-light")), must(needs("beacon")));

        assertEquals(2, found.irreducible().size());
        assertEquals(
                List.of(flag("work-light", Blocked.Rule.NOT_TOGETHER), flag("beacon", Blocked.Rule.NOT_TOGETHER)),
                found.why());
    }

    @Test
    void whatLowersTheMachineGetsItUnderTheDoorAndNamesItselfWhereItIsNotEnough() {
        Yard yard = new Yard().addOn("folding-bar", 400, List.of(metres("height", -0.3)), List.of());
        Unit unit = unit().figure(Figure.HEIGHT, 2.4).make();
        Requirement door = must(atMost("height", new Amount(Dimension.LENGTH, 2.1), Yard.PARKED));
        Requirement low = must(atMost("height", new Amount(Dimension.LENGTH, 2.0), Yard.PARKED));

        Match match = yard.matcher().match(unit, needs(door));

        assertEquals(Verdict.READY_ONCE_EQUIPPED, match.verdict());
        Blocked blocked = why(yard, unit, low).get(0);
        assertEquals(Blocked.Rule.TOO_MUCH, blocked.rule());
        assertEquals(2.1, blocked.available().orElseThrow().si(), 1e-9);
    }

    @Test
    void causeThatTwoToolsHaveInCommonIsTheEndOfTheChainForBoth() {
        Yard yard = new Yard()
                .feature("mid-pto")
                .feature("gear-tower")
                .addOn("mid-pto-kit", 900, List.of(gives("mid-pto")), List.of(needs("gear-tower")));
        tool(yard, "blower", needs("mid-pto"));
        tool(yard, "sweeper", needs("mid-pto"));

        assertEquals(
                List.of(flag("blower", "gear-tower", Blocked.Rule.CANNOT_BE_ADDED)), why(yard, unit().make(), SNOW));
    }

    /** Weights for the road hold nothing down at work, so that they are not sold here is no reason. */
    @Test
    void whatHelpsOnlyInAnotherWorkingStateIsNotNamedAsWhatCouldHaveHelped() {
        Yard yard = new Yard()
                .sum("hitch-weight", Dimension.MASS)
                .addOn("road-weights", 300, List.of(kilograms("hitch-weight", 300, Yard.PARKED)), List.of())
                .priced("road-weights", Optional.empty(), Optional.empty());

        List<Blocked> why = why(yard, unit().make(), must(atLeast("hitch-weight", kg(200), Yard.LOADER_WORK)));

        assertEquals(
                List.of(new Blocked(
                        Optional.empty(),
                        new CapabilityId("hitch-weight"),
                        Blocked.Rule.TOO_LITTLE,
                        Optional.of(kg(200)),
                        Optional.of(kg(0)),
                        Optional.of(Yard.LOADER_WORK))),
                why);
    }
}
