package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import org.junit.jupiter.api.Test;

class LoaderPayloadTest {

    private static final LiftAtDistance LIFT =
            LiftAtDistance.fromRatings(Mass.ofKilograms(900), Mass.ofKilograms(700), Length.ofMeters(0.5));
    private static final Length PINS = Length.ofMeters(0.9);
    private static final Length CENTER = Length.ofMeters(0.5);

    /** The load that lifts the rear wheels leaves nothing on them; half of it, as earth-moving loaders are rated. */
    @Test
    void tippingLoadUnloadsTheRearAxle() {
        Draws.forAll(draws -> {
            Axles axles = draws.axles();
            Length ahead = draws.meters(0.3, 2);
            Mass tipping = FrontLoadLimit.tipping(axles, ahead);
            assertEquals(0, axles.withAhead(tipping, ahead).rear().si(), 1e-8);
        });
    }

    @Test
    void theShareThatStaysBehindIsTheBallastRuleTurnedRound() {
        Draws.forAll(draws -> {
            Axles axles = draws.axles();
            Length ahead = draws.meters(0.3, 2);
            Mass load = FrontLoadLimit.keepingRearShare(axles, axles.total(), ahead);
            Mass needed = RearBallast.needed(axles, axles.total(), Length.ofMeters(1));
            Axles loaded = axles.withAhead(load, ahead);
            assertTrue(needed.si() == 0 || load.si() == 0, "no load where ballast is missing already");
            assertEquals(needed.si(), RearBallast.needed(loaded, axles.total(), Length.ofMeters(1)).si(), 1e-8);
        });
    }

    /** The two rules of balance turned round: with that weight behind, and not with less, they let the load be. */
    @Test
    void ballastToLiftIsTheLeastWithWhichBalanceDoesNotDecide() {
        Draws.forAll(draws -> {
            Axles axles = draws.axles();
            Length ahead = draws.meters(0.3, 2);
            Length behind = draws.meters(0, 2);
            Mass load = draws.kilograms(0, 1500);
            Mass ballast = RearBallast.toLift(axles, axles.total(), load, ahead, behind);
            Axles with = axles.withBehind(ballast, behind);
            double balance = balance(with, axles.total(), ahead);
            assertTrue(balance >= load.si() - 1e-6, () -> "with " + ballast + " only " + balance);
            if (ballast.si() > 0) {
                assertEquals(load.si(), balance, 1e-6);
            }
        });
    }

    private static double balance(Axles axles, Mass tractor, Length ahead) {
        return Math.min(
                FrontLoadLimit.tipping(axles, ahead).si() * FrontLoadLimit.OF_TIPPING.si(),
                FrontLoadLimit.keepingRearShare(axles, tractor, ahead).si());
    }

    @Test
    void hydraulicsRuleOnAHeavyTractor() {
        Axles heavy = new Axles(Mass.ofKilograms(1500), Mass.ofKilograms(4000), Length.ofMeters(2));
        LoaderPayload payload = LoaderPayload.of(LIFT, heavy, Mass.ofKilograms(4000), PINS, CENTER);
        assertEquals(Limit.HYDRAULICS, payload.limit());
        assertEquals(700, payload.usable().si(), 1e-9);
    }

    @Test
    void theRearAxleRulesOnALightTractorAndBallastHelpsIt() {
        Axles light = new Axles(Mass.ofKilograms(400), Mass.ofKilograms(500), Length.ofMeters(1.5));
        LoaderPayload bare = LoaderPayload.of(LIFT, light, light.total(), PINS, CENTER);
        assertEquals(Limit.REAR_AXLE_SHARE, bare.limit());
        Axles ballasted = light.withBehind(Mass.ofKilograms(300), Length.ofMeters(1.2));
        LoaderPayload better = LoaderPayload.of(LIFT, ballasted, light.total(), PINS, CENTER);
        assertTrue(better.usable().si() > bare.usable().si());
    }

    @Test
    void halfTheTippingLoadRulesWhereTheRearAxleIsOtherwiseHeavyEnough() {
        Axles axles = new Axles(Mass.ofKilograms(300), Mass.ofKilograms(700), Length.ofMeters(1.5));
        LoaderPayload payload = LoaderPayload.of(LIFT, axles, Mass.ofKilograms(300), PINS, CENTER);
        assertEquals(Limit.TIPPING, payload.limit());
        assertEquals(0.5 * 700 * 1.5 / 1.4, payload.usable().si(), 1e-9);
    }

    @Test
    void whatIsCarriedTakesFromEveryLimit() {
        Axles axles = new Axles(Mass.ofKilograms(600), Mass.ofKilograms(1200), Length.ofMeters(1.7));
        LoaderPayload bare = LoaderPayload.of(LIFT, axles, axles.total(), PINS, CENTER);
        Carried forks = new Carried(Mass.ofKilograms(120), Length.ofMeters(0.2));
        LoaderPayload forked = LoaderPayload.of(LIFT, axles, axles.total(), PINS, CENTER, forks);
        assertTrue(forked.hydraulic().si() < bare.hydraulic().si());
        assertTrue(forked.halfTipping().si() < bare.halfTipping().si());
        assertTrue(forked.rearShare().si() < bare.rearShare().si());
        assertThrows(OutOfRangeException.class,
                () -> LoaderPayload.of(LIFT, axles, axles.total(), PINS, Length.ofMeters(1.2)));
    }
}
