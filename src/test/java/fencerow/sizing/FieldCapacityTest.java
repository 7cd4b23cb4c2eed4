package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Area;
import fencerow.terms.Length;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Time;
import org.junit.jupiter.api.Test;

class FieldCapacityTest {

    /** 12 s between stakes 88 ft apart is 5 mph: a copy of AgDM A3-24, Iowa State University Extension. */
    @Test
    void twelveSecondsOverEightyEightFeetIsFiveMph() {
        assertEquals(5, FieldCapacity.timed(Length.ofFeet(88), Time.ofSeconds(12)).toMph(), 1e-9);
    }

    /** The bulletins' own form: mph x ft x efficiency / 8.25. */
    @Test
    void agreesWithTheFormInAcresMphAndFeet() {
        Draws.forAll(draws -> {
            double feet = draws.between(3, 60);
            double mph = draws.between(0.5, 12);
            double share = draws.between(0.3, 1);
            double acres = FieldCapacity.rate(Length.ofFeet(feet), Speed.ofMph(mph), Ratio.ofFraction(share))
                    .toAcresPerHour();
            assertEquals(mph * feet * share / 8.25, acres, 1e-9 * acres);
        });
    }

    @Test
    void widthToFinishIsTheWidthThatFinishes() {
        Draws.forAll(draws -> {
            Area area = Area.ofAcres(draws.between(0.5, 50));
            Length width = draws.meters(1, 6);
            Speed speed = Speed.ofMph(draws.between(1, 6));
            Ratio share = Ratio.ofPercent(draws.between(50, 95));
            Time time = FieldCapacity.time(area, width, speed, share);
            Length back = FieldCapacity.widthToFinish(area, time, speed, share);
            assertEquals(width.si(), back.si(), 1e-9);
        });
    }

    @Test
    void twiceTheWidthTakesHalfTheTime() {
        Draws.forAll(draws -> {
            Area area = Area.ofAcres(draws.between(0.5, 50));
            Speed speed = Speed.ofMph(draws.between(1, 6));
            Ratio share = Ratio.ofPercent(draws.between(50, 95));
            double meters = draws.between(1, 4);
            double one = FieldCapacity.time(area, Length.ofMeters(meters), speed, share).si();
            double two = FieldCapacity.time(area, Length.ofMeters(2 * meters), speed, share).si();
            assertEquals(one, 2 * two, 1e-9 * one);
        });
    }

    @Test
    void overlapComesOffTheEfficiencyOnce() {
        Ratio share = FieldCapacity.efficiency(Length.ofInches(6), Length.ofInches(60), Ratio.ofPercent(90));
        assertEquals(0.81, share.toFraction(), 1e-12);
    }

    @Test
    void refusesAWidthThatIsNone() {
        OutOfRangeException refused = assertThrows(OutOfRangeException.class,
                () -> FieldCapacity.rate(Length.ofInches(4), Speed.ofMph(3), Ratio.ofPercent(80)));
        assertEquals("width", refused.what());
        assertEquals("width 0.1016 m is outside the valid range; give 0.3048 m to 20.12 m", refused.getMessage());
    }

    @Test
    void refusesMoreThanFullEfficiencyAndOverlapWiderThanTheTool() {
        assertThrows(OutOfRangeException.class,
                () -> FieldCapacity.rate(Length.ofFeet(5), Speed.ofMph(3), Ratio.ofPercent(101)));
        assertThrows(OutOfRangeException.class,
                () -> FieldCapacity.efficiency(Length.ofFeet(6), Length.ofFeet(5), Ratio.ofPercent(90)));
        assertThrows(IllegalArgumentException.class,
                () -> FieldCapacity.timed(Length.ofFeet(88), Time.ofSeconds(0)));
    }

    /** A hay disc mower's speeds promise a lawn owner two to three times the truth. */
    @Test
    void aDiscMowerIsNoLawnMower() {
        double lawn = FieldMachine.LAWN_MOWER.typicalSpeed().si();
        assertTrue(FieldMachine.DISC_MOWER.speed().high().si() >= 2 * lawn);
    }
}
