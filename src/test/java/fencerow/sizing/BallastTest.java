package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Volume;
import org.junit.jupiter.api.Test;

class BallastTest {

    /** As printed alike in five implement makers' manuals: GHmin = [GV a - TH b + 0.45 TL b] / (b + c + d). */
    @Test
    void rearBallastIsThePrintedFormula() {
        Draws.forAll(draws -> {
            Axles bare = draws.axles();
            double gv = draws.between(100, 900);
            double a = draws.between(0.3, 1.6);
            double cd = draws.between(0.6, 1.8);
            double b = bare.wheelbase().si();
            double tl = bare.total().si();
            double printed = (gv * a - bare.rear().si() * b + 0.45 * tl * b) / (b + cd);
            Axles loaded = bare.withAhead(new Mass(gv), new Length(a));
            Mass needed = RearBallast.needed(loaded, bare.total(), new Length(cd));
            assertEquals(Math.max(0, printed), needed.si(), 1e-8);
            Axles ballasted = loaded.withBehind(needed, new Length(cd));
            assertTrue(ballasted.rear().si() >= 0.45 * tl - 1e-8);
        });
    }

    /** As printed alike in five implement makers' manuals: GVmin = [GH (c + d) - TV b + 0.2 TL b] / (a + b). */
    @Test
    void frontBallastIsThePrintedFormula() {
        Draws.forAll(draws -> {
            Axles bare = draws.axles();
            double gh = draws.between(100, 900);
            double cd = draws.between(0.6, 1.8);
            double a = draws.between(0.3, 1.6);
            double b = bare.wheelbase().si();
            double tl = bare.total().si();
            double printed = (gh * cd - bare.front().si() * b + 0.2 * tl * b) / (a + b);
            Axles loaded = bare.withBehind(new Mass(gh), new Length(cd));
            Mass needed = FrontBallast.needed(loaded, bare.total(), new Length(a));
            assertEquals(Math.max(0, printed), needed.si(), 1e-8);
        });
    }

    /** 20 % of tractor and equipment, as a rotary cutter's operator's manual words it, asks for more. */
    @Test
    void shareOfTheWholeAsksForMoreThanShareOfTheUnladenTractor() {
        Draws.forAll(draws -> {
            Axles bare = draws.axles();
            Axles loaded = bare.withBehind(draws.kilograms(100, 900), draws.meters(0.6, 1.8));
            Length ahead = draws.meters(0.3, 1.6);
            Mass whole = FrontBallast.neededOfWhole(loaded, ahead);
            assertTrue(whole.si() >= FrontBallast.needed(loaded, bare.total(), ahead).si());
            Axles ballasted = loaded.withAhead(whole, ahead);
            assertTrue(ballasted.frontShare().si() >= 0.2 - 1e-9);
        });
    }

    @Test
    void moreLoadNeedsMoreBallast() {
        Draws.forAll(draws -> {
            Axles bare = draws.axles();
            Length ahead = draws.meters(0.3, 1.6);
            Length behind = draws.meters(0.6, 1.8);
            double load = draws.between(0, 800);
            double less = rear(bare, load, ahead, behind);
            double more = rear(bare, load + 50, ahead, behind);
            assertTrue(more >= less);
        });
    }

    private static double rear(Axles bare, double load, Length ahead, Length behind) {
        return RearBallast.needed(bare.withAhead(new Mass(load), ahead), bare.total(), behind).si();
    }

    /** Against tipping forward, hitch weight is worth (b + c + d) / b times wheel weight, 1.5 to 1.9 in practice. */
    @Test
    void hitchWeightIsWorthMoreThanWheelWeight() {
        Length wheelbase = Length.ofMeters(1.7);
        double leverage = BallastSupply.BALLAST_BOX.leverage(wheelbase, Length.ofMeters(1.4)).si();
        assertEquals(3.1 / 1.7, leverage, 1e-12);
        assertEquals(1, BallastSupply.TIRE_FLUID.leverage(wheelbase, Length.ofMeters(1.4)).si(), 1e-12);
        Axles loaded = new Axles(Mass.ofKilograms(620), Mass.ofKilograms(830), wheelbase)
                .withAhead(Mass.ofKilograms(450), Length.ofMeters(1.2));
        Mass tractor = Mass.ofKilograms(1450);
        double inWheels = RearBallast.needed(loaded, tractor, new Length(0)).si();
        double onHitch = RearBallast.needed(loaded, tractor, Length.ofMeters(1.4)).si();
        assertEquals(leverage, inWheels / onHitch, 1e-9);
    }

    /** Dry sand at 95 to 100 lb/ft3 and concrete at 145 to 150: from memory. */
    @Test
    void aFilledBoxWeighsItsFill() {
        Mass empty = Mass.ofPounds(100);
        Volume inside = Volume.ofCubicFeet(6);
        assertEquals(670, BallastSupply.box(empty, inside, BallastSupply.SAND_FILL.low()).toPounds(), 1e-6);
        assertEquals(1000, BallastSupply.box(empty, inside, BallastSupply.CONCRETE_FILL.high()).toPounds(), 1e-6);
    }

    /** Fluid and wheel weights spare the hitch and not the front axle; a box the other way round. */
    @Test
    void everySupplyTakesSomethingAway() {
        for (BallastSupply supply : BallastSupply.values()) {
            assertFalse(supply.drawbacks().isEmpty(), supply.id());
            boolean takesHitch = supply.drawbacks().contains(BallastSupply.Drawback.HITCH_TAKEN);
            boolean noRelief = supply.drawbacks().contains(BallastSupply.Drawback.NO_FRONT_RELIEF);
            assertEquals(supply.isOnHitch(), takesHitch);
            assertEquals(!supply.isOnHitch(), noRelief);
        }
    }
}
