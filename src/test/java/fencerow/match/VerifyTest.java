package fencerow.match;

import static fencerow.match.Yard.atLeast;
import static fencerow.match.Yard.atMost;
import static fencerow.match.Yard.gives;
import static fencerow.match.Yard.metres;
import static fencerow.match.Yard.must;
import static fencerow.match.Yard.needs;
import static fencerow.match.Yard.unit;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Requirement;
import fencerow.stock.Fitter;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.List;
import java.util.OptionalInt;
import org.junit.jupiter.api.Test;

/** Which unverified pieces are worth a look, in which order, and when bounds stand for them. */
class VerifyTest {
    private static Verify saves(String feature, long dollars) {
        return new Verify(new FeatureId(feature), new PriceRange(Money.ZERO, Money.ofDollars(dollars)), false);
    }

    private static Yard kit(Yard yard, String feature, long dollars) {
        return yard.feature(feature).addOn(feature + "-kit", dollars, List.of(gives(feature)), List.of());
    }

    private static Amount high(double metres) {
        return new Amount(Dimension.LENGTH, metres);
    }

    /** Lamps that nobody looked for, each 10 cm on top of a machine 2 m high. */
    private static Match lamps(int count, int wanted, double door) {
        Yard yard = new Yard().sum("light", Dimension.COUNT);
        Yard.UnitMaker unit = unit().figure(Figure.HEIGHT, 2);
        for (int i = 1; i <= count; i++) {
            yard.feature("lamp-" + i, metres("height", 0.1), gives("light"));
            unit.unverified("lamp-" + i);
        }
        return yard.matcher().match(unit.make(), needs(
                must(atLeast("light", Amount.count(wanted), Yard.PARKED)),
                must(atMost("height", high(door), Yard.PARKED))));
    }

    @Test
    void whatSavesMostIsNamedFirstAndWhatSavesTheSameByName() {
        Yard yard = new Yard();
        kit(yard, "lights", 200);
        kit(yard, "rear-pto", 900);
        kit(yard, "canopy", 200);

        Match match = yard.matcher().match(
                unit().unverified("lights").unverified("rear-pto").unverified("canopy").make(),
                needs(must(needs("lights")), must(needs("rear-pto")), must(needs("canopy"))));

        assertEquals(List.of(saves("rear-pto", 900), saves("canopy", 200), saves("lights", 200)), match.verify());
    }

    @Test
    void pieceThatTurnsTheVerdictAloneIsNamedWithoutTheOnesThatNeedHelp() {
        Yard yard = new Yard()
                .sum("lift", Dimension.COUNT)
                .feature("helper", gives("lift"))
                .feature("pump", gives("lift"), gives("lift"));

        Match match = yard.matcher().match(
                unit().unverified("helper").unverified("pump").make(),
                needs(must(atLeast("lift", Amount.count(2), Yard.PARKED))));

        assertEquals(Verdict.LOOK_CLOSER, match.verdict());
        assertEquals(List.of(new Verify(new FeatureId("pump"), PriceRange.ZERO, true)), match.verify());
    }

    @Test
    void knownMachineHasNothingToVerify() {
        Match match = kit(new Yard(), "lights", 200).matcher().match(unit().make(), needs(must(needs("lights"))));

        assertEquals(List.of(), match.verify());
        assertFalse(match.bracketed());
    }

    /** Five lamps need half a metre, and the door leaves 30 cm; seven are too many to try all ways they may be. */
    @Test
    void sixUncheckedPiecesAreTriedInAllWaysAndWithSevenBoundsStandForThem() {
        Match six = lamps(6, 5, 2.3);
        Match seven = lamps(7, 5, 2.3);

        assertFalse(six.bracketed());
        assertEquals(Verdict.CANNOT_BE_MADE_READY, six.verdict());
        assertTrue(seven.bracketed());
        assertEquals(Verdict.LOOK_CLOSER, seven.verdict());
    }

    @Test
    void mustHavesMetAreCountedBesideWishes() {
        Yard yard = new Yard().feature("lights").feature("canopy").feature("factory-cab");

        Match match = yard.matcher().match(
                unit().fitted("lights").make(),
                needs(must(needs("lights")), must(needs("factory-cab")), Yard.wish(needs("canopy"))));

        assertEquals(2, match.score().mustsAll());
        assertEquals(1, match.score().mustsMet());
    }

    /** Two kits of an hour and a half each, and one of the first kind more. */
    @Test
    void planTakesAsLongAsAllItsFittingTogether() {
        Yard yard = new Yard()
                .feature("rear-remotes")
                .addOn("remote-kit", 2, OptionalInt.empty(), Fitter.ANY_SHOP, 600,
                        List.of(gives("rear-remotes")), List.of());
        kit(yard, "lights", 200);

        Match match = yard.matcher().match(unit().make(), needs(
                must(atLeast("rear-remotes", Amount.count(2), Yard.PARKED)), must(needs("lights"))));

        assertEquals(270, match.findPlan().orElseThrow().minutes());
        assertEquals(Money.ofDollars(1400L), match.findPlan().orElseThrow().price().middle());
    }

    /**
     * The seat and the canopy belong together, for their kits exclude each other, and on this unit the seat is there.
     * That canopy and lights both fail: the lights were asked for before.
     */
    @Test
    void ofSeveralThingsThatCannotBeMetTheOneAskedForFirstIsTold() {
        Yard yard = new Yard()
                .feature("seat")
                .feature("lights")
                .sum("shade", Dimension.COUNT)
                .feature("parasol", gives("shade"))
                .addOn("seat-kit", 300, List.of(gives("seat")), List.of(), "canopy-kit")
                .addOn("canopy-kit", 700, List.of(gives("shade")), List.of());
        Requirement lights = must(needs("lights"));
        Unit seated = unit().fitted("seat").make("seated");
        Unit shaded = unit().like(seated).fitted("parasol").make("shaded");

        Match match = yard.matcher().match(List.of(seated, shaded), needs(
                must(needs("seat")), lights, must(atLeast("shade", Amount.count(2), Yard.PARKED)))).get(0);

        assertEquals(List.of(lights), ((Finding.Infeasible) match.finding()).irreducible());
    }
}
