package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import org.junit.jupiter.api.Test;

class LiftAtDistanceTest {

    /** The reciprocal of lift is linear in distance: 1/F = 1/F0 + (1/F1 - 1/F0) d / d1. */
    @Test
    void reciprocalOfLiftIsLinearBetweenTwoRatings() {
        Draws.forAll(draws -> {
            Mass near = draws.kilograms(400, 3000);
            Mass far = draws.kilograms(300, near.si());
            Length apart = draws.meters(0.4, 0.8);
            LiftAtDistance lift = LiftAtDistance.fromRatings(near, far, apart);
            double d = draws.between(0, 2 * apart.si());
            double reciprocal = 1 / near.si() + (1 / far.si() - 1 / near.si()) * d / apart.si();
            assertEquals(1 / reciprocal, lift.at(Length.ofMeters(d)).si(), 1e-9 * near.si());
            assertEquals(far.si(), lift.at(apart).si(), 1e-9 * near.si());
        });
    }

    @Test
    void twoRatingsOnOneArmGiveTheSameLiftAsItsReach() {
        Draws.forAll(draws -> {
            Mass near = draws.kilograms(400, 3000);
            Length reach = draws.meters(1.2, 2.4);
            LiftAtDistance byReach = LiftAtDistance.fromReach(near, reach);
            Length rated = Length.ofMillimeters(500);
            LiftAtDistance byRatings = LiftAtDistance.fromRatings(near, byReach.at(rated), rated);
            Length d = draws.meters(0, 0.6);
            Carried forks = new Carried(draws.kilograms(0, 200), draws.meters(0, 0.5));
            assertEquals(byReach.payload(d, forks).si(), byRatings.payload(d, forks).si(), 1e-6);
        });
    }

    /** 5,000 lb at 24 in is a load moment of 120,000 in-lb, at any distance: lift truck load composition, restated. */
    @Test
    void theMomentOfTheLiftIsTheSameAtAnyDistance() {
        LiftAtDistance lift = LiftAtDistance.fromReach(Mass.ofPounds(5000), Length.ofInches(24));
        for (double ahead : new double[] {0, 4, 6, 12}) {
            assertEquals(120_000, lift.at(Length.ofInches(ahead)).toPounds() * (24 + ahead), 1e-6);
        }
    }

    /** 1,500 lb at the pins, reach 65 in: a 120 lb coupler that sets the load 4 in forward costs 144 lb (12.5 %). */
    @Test
    void aCouplerCostsItsOwnMomentAndTheOffset() {
        LiftAtDistance lift = LiftAtDistance.fromReach(Mass.ofPounds(1500), Length.ofInches(65));
        double bare = lift.payload(Length.ofInches(19.7)).toPounds();
        Carried coupler = new Carried(Mass.ofPounds(120), Length.ofInches(3));
        double coupled = lift.payload(Length.ofInches(23.7), coupler).toPounds();
        assertEquals(144, bare - coupled, 0.5);
        assertEquals(0.125, (bare - coupled) / bare, 0.0005);
    }

    @Test
    void fallsWithDistanceAndWithWhatIsCarried() {
        Draws.forAll(draws -> {
            LiftAtDistance lift = LiftAtDistance.fromReach(draws.kilograms(500, 2000), draws.meters(1.2, 2.4));
            Carried forks = new Carried(draws.kilograms(50, 300), draws.meters(0, 0.5));
            double d = draws.between(0, 0.5);
            Length near = Length.ofMeters(d);
            Length far = Length.ofMeters(d + 0.05);
            assertTrue(lift.at(far).si() < lift.at(near).si());
            assertTrue(lift.payload(near, forks).si() < lift.at(near).si());
        });
    }

    @Test
    void aLoadIsLiftedJustAsFarOutAsItsReach() {
        Draws.forAll(draws -> {
            LiftAtDistance lift = LiftAtDistance.fromReach(draws.kilograms(500, 2000), draws.meters(1.2, 2.4));
            Carried forks = new Carried(draws.kilograms(0, 150), draws.meters(0, 0.5));
            Mass load = lift.payload(draws.meters(0, 0.6), forks);
            Length reach = lift.reachFor(load, forks).orElseThrow();
            assertEquals(load.si(), lift.payload(reach, forks).si(), 1e-6);
            Mass tooHeavy = new Mass(lift.payload(new Length(0), forks).si() + 1);
            assertTrue(lift.reachFor(tooHeavy, forks).isEmpty());
        });
    }

    @Test
    void aLinkageThatLosesNothingLiftsAsFarAsIsAnswered() {
        Mass both = Mass.ofPounds(1000);
        LiftAtDistance lift = LiftAtDistance.fromRatings(both, both, Length.ofMillimeters(500));
        assertEquals(1, lift.reachFor(Mass.ofPounds(900)).orElseThrow().toMeters(), 1e-12);
    }

    @Test
    void nothingIsLeftUnderTooHeavyATool() {
        LiftAtDistance lift = LiftAtDistance.fromReach(Mass.ofPounds(700), Length.ofInches(60));
        assertEquals(0, lift.payload(Length.ofInches(10), new Carried(Mass.ofPounds(800), Length.ofInches(5))).si());
    }

    @Test
    void saysWhenItGuessesAndRefusesToGuessFarther() {
        LiftAtDistance lift =
                LiftAtDistance.fromRatings(Mass.ofPounds(2000), Mass.ofPounds(1500), Length.ofMillimeters(500));
        assertFalse(lift.isExtrapolated(Length.ofMillimeters(750)));
        assertTrue(lift.isExtrapolated(Length.ofMillimeters(760)));
        assertEquals(1, lift.farthest().toMeters(), 1e-12);
        assertThrows(OutOfRangeException.class, () -> lift.at(Length.ofMillimeters(1010)));
        assertThrows(OutOfRangeException.class, () -> lift.at(Length.ofMillimeters(-1)));
    }

    @Test
    void refusesMoreLiftFartherOutAndNegativeMasses() {
        assertThrows(OutOfRangeException.class, () -> LiftAtDistance.fromRatings(
                Mass.ofPounds(1500), Mass.ofPounds(1600), Length.ofMillimeters(500)));
        assertThrows(IllegalArgumentException.class, () -> new Carried(Mass.ofPounds(-1), Length.ofInches(1)));
    }
}
