package fencerow.match;

import static fencerow.match.Yard.gives;
import static fencerow.match.Yard.kilograms;
import static fencerow.match.Yard.must;
import static fencerow.match.Yard.needs;
import static fencerow.match.Yard.takes;
import static fencerow.match.Yard.unit;
import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Fitter;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.ItemId;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What can be had for a unit, at which price, and the reason given where it cannot. */
class AssortmentTest {
    private static final Requirement CAB = must(needs("factory-cab"));
    private static final Requirement OIL = must(needs("loader-circuit"));

    private static Yard cabYard(Fitter by) {
        return new Yard()
                .feature("factory-cab")
                .addOn("cab", 1, OptionalInt.empty(), by, 9000, List.of(gives("factory-cab")), List.of());
    }

    private static Yard diverterYard() {
        return new Yard()
                .sum("loader-circuit", Dimension.COUNT)
                .addOn("diverter", 1, OptionalInt.of(20), Fitter.OWNER, 500,
                        List.of(gives("loader-circuit")), List.of());
    }

    private static Needs hours(double aYear) {
        return new Needs(List.of(OIL), Set.of(), Set.of(), Optional.empty(), OptionalDouble.of(aYear));
    }

    private static List<Blocked> why(Match match) {
        return ((Finding.Infeasible) match.finding()).why();
    }

    private static List<Blocked> refused(Blocked.Rule rule, String item, String of) {
        return List.of(new Blocked(
                Optional.of(new ItemId(item)), new CapabilityId(of), rule, Optional.empty(), Optional.empty()));
    }

    private static PriceRange planned(Match match) {
        return match.findPlan().orElseThrow().price();
    }

    @Test
    void whatOnlyTheFactoryFitsCannotBeHadForATractorInTheYard() {
        Match match = cabYard(Fitter.FACTORY).matcher().match(unit().make(), needs(CAB));

        assertEquals(refused(Blocked.Rule.FACTORY_ONLY, "cab", "factory-cab"), why(match));
    }

    @Test
    void anyonesKitForWhatOnlyTheFactoryPutsOnThisModelCannotBeHadEither() {
        Match match = cabYard(Fitter.ANY_SHOP).matcher().match(unit().factoryOnly("factory-cab").make(), needs(CAB));

        assertEquals(Verdict.CANNOT_BE_MADE_READY, match.verdict());
        assertEquals(refused(Blocked.Rule.FACTORY_ONLY, "cab", "factory-cab"), why(match));
    }

    @Test
    void kitThatTakesOffWhatThisModelNeverHasCanBeHad() {
        Yard yard = new Yard()
                .feature("roll-bar")
                .feature("canopy")
                .addOn("canopy-kit", 700, List.of(takes("roll-bar"), gives("canopy")), List.of());

        Match match = yard.matcher().match(unit().never("roll-bar").make(), needs(must(needs("canopy"))));

        assertEquals(Verdict.READY_ONCE_EQUIPPED, match.verdict());
    }

    @Test
    void whatHasNoPriceHereIsNotSoldHere() {
        Yard yard = cabYard(Fitter.ANY_SHOP).priced("cab", Optional.empty(), Optional.empty());

        assertEquals(
                refused(Blocked.Rule.NOT_SOLD_HERE, "cab", "factory-cab"),
                why(yard.matcher().match(unit().make(), needs(CAB))));
    }

    @Test
    void whatHasAPriceOnlyWithAnOrderIsTheFactorysForATractorInTheYard() {
        Yard yard = cabYard(Fitter.ANY_SHOP)
                .priced("cab", Optional.of(PriceRange.ofDollars(8000, 8000)), Optional.empty());

        Match ordered = yard.matcher().match(unit().orderable().make(), needs(CAB));

        assertEquals(PriceRange.ofDollars(8000, 8000), planned(ordered));
        assertEquals(
                refused(Blocked.Rule.FACTORY_ONLY, "cab", "factory-cab"),
                why(yard.matcher().match(unit().make(), needs(CAB))));
    }

    @Test
    void tractorToOrderIsPricedAsOrderedAndElseAsFittedAfterwards() {
        PriceRange order = PriceRange.ofDollars(7000, 7500);
        PriceRange later = PriceRange.ofDollars(9000, 9900);
        Unit toOrder = unit().orderable().make();
        Matcher both = cabYard(Fitter.ANY_SHOP).priced("cab", Optional.of(order), Optional.of(later)).matcher();
        Matcher afterwards = cabYard(Fitter.ANY_SHOP).priced("cab", Optional.empty(), Optional.of(later)).matcher();

        assertEquals(order, planned(both.match(toOrder, needs(CAB))));
        assertEquals(later, planned(afterwards.match(toOrder, needs(CAB))));
        assertEquals(later, planned(both.match(unit().make(), needs(CAB))));
    }

    @Test
    void stopgapDoesForAsManyHoursAYearAsItIsGoodForAndNoMore() {
        Matcher matcher = diverterYard().matcher();

        assertEquals(Verdict.READY_ONCE_EQUIPPED, matcher.match(unit().make(), hours(20)).verdict());
        assertEquals(
                refused(Blocked.Rule.TOO_MANY_HOURS, "diverter", "loader-circuit"),
                why(matcher.match(unit().make(), hours(20.5))));
    }

    @Test
    void onlyAPlanWithAStopgapHasABetterOneBesideIt() {
        Yard yard = diverterYard().addOn("third-function", 400, List.of(gives("loader-circuit")), List.of());
        Match lasting = yard.matcher().match(unit().make(), needs(OIL));
        Match makeshift = diverterYard().matcher().match(unit().make(), needs(OIL));

        assertEquals(Optional.empty(), ((Finding.Feasible) lasting.finding()).withoutStopgap());
        assertEquals(false, lasting.findPlan().orElseThrow().hasStopgap());
        assertEquals(true, makeshift.findPlan().orElseThrow().hasStopgap());
        assertEquals(Optional.empty(), ((Finding.Feasible) makeshift.finding()).withoutStopgap());
    }

    @Test
    void planOfWhatTheShopperHasIsFreeAndOneWithAPriceIsNot() {
        Yard yard = new Yard()
                .feature("rear-pto")
                .attachment("blower", 3000, "clear-snow", Yard.LOADER_WORK, List.of(), List.of(needs("rear-pto")));
        Needs owned = new Needs(List.of(must(needs("does:clear-snow"))), Set.of(new ItemId("blower")), Set.of(),
                Optional.empty(), OptionalDouble.empty());
        Unit unit = unit().fitted("rear-pto").make();

        Plan free = yard.matcher().match(unit, owned).findPlan().orElseThrow();
        Plan bought = yard.matcher().match(unit, needs(must(needs("does:clear-snow")))).findPlan().orElseThrow();

        assertEquals(List.of(new ItemId("blower")), free.lines().stream().map(Plan.Line::item).toList());
        assertEquals(true, free.isFree());
        assertEquals(false, bought.isFree());
        assertEquals(true, Plan.EMPTY.isFree());
    }

    @Test
    void itemsThatExcludeEachOtherAreNeverPlannedTogetherWhicheverOfThemSaysSo() {
        Requirement[] musts = {must(needs("canopy")), must(needs("beacon"))};
        for (boolean firstSaysSo : new boolean[] {true, false}) {
            Yard yard = new Yard()
                    .feature("canopy")
                    .sum("beacon", Dimension.COUNT)
                    .addOn("seat-cover", 100, List.of(gives("seat")), List.of())
                    .addOn("canopy-kit", 600, List.of(gives("canopy")), List.of(),
                            firstSaysSo ? new String[] {"roof-beacon"} : new String[0])
                    .addOn("roof-beacon", 200, List.of(gives("beacon")), List.of(),
                            firstSaysSo ? new String[0] : new String[] {"canopy-kit"})
                    .addOn("post-beacon", 300, List.of(gives("beacon")), List.of());

            Match match = yard.matcher().match(unit().make(), needs(musts));

            assertEquals(Money.ofDollars(900L), planned(match).middle());
        }
    }

    @Test
    void exclusionHoldsForTheFirstItemOfTheCatalogueAndOneOfNoItemMeansNothing() {
        Yard yard = new Yard()
                .feature("canopy")
                .sum("beacon", Dimension.COUNT)
                .addOn("canopy-kit", 600, List.of(gives("canopy")), List.of())
                .addOn("roof-beacon", 200, List.of(gives("beacon")), List.of(), "canopy-kit")
                .addOn("tow-hook", 80, List.of(gives("hook")), List.of(), "no-longer-sold");
        Requirement canopy = must(needs("canopy"));

        assertEquals(
                Verdict.CANNOT_BE_MADE_READY,
                yard.matcher().match(unit().make(), needs(canopy, must(needs("beacon")))).verdict());
        assertEquals(
                Money.ofDollars(680L),
                planned(yard.matcher().match(unit().make(), needs(canopy, must(needs("hook"))))).middle());
    }

    @Test
    void onlySharedResourcesAreKeptFromFallingBelowNothing() {
        Yard own = new Yard()
                .sum("margin", Dimension.MASS)
                .addOn("box", 500, List.of(gives("storage"), kilograms("margin", -50)), List.of());
        Yard shared = new Yard()
                .shared("port-block")
                .addOn("valve", 4, OptionalInt.empty(), Fitter.ANY_SHOP, 500,
                        List.of(gives("outlet"), takes("port-block")), List.of());

        assertEquals(
                Verdict.READY_ONCE_EQUIPPED,
                own.matcher().match(unit().make(), needs(must(needs("storage")))).verdict());
        assertEquals(
                Verdict.READY_ONCE_EQUIPPED,
                shared.matcher().match(unit().make(), needs(must(needs("outlet")))).verdict());
        assertEquals(
                Verdict.CANNOT_BE_MADE_READY,
                shared.matcher().match(unit().make(), needs(must(Yard.atLeast(
                        "outlet", Amount.count(2), Yard.PARKED)))).verdict());
    }
}
