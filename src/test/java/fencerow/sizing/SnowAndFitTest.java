package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Angle;
import fencerow.terms.Area;
import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.MassRate;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Volume;
import org.junit.jupiter.api.Test;

class SnowAndFitTest {

    /** 13 in of snow at 8 % are 1 in of water (1.04): an encyclopedia page on snow density. */
    @Test
    void snowMeltsToItsShareOfWater() {
        Length water = SnowCover.water(Length.ofInches(13), Density.ofKilogramsPerCubicMeter(80));
        assertEquals(1.04, water.toInches(), 0.001);
    }

    @Test
    void aRidgeHoldsWhatWasCleared() {
        Draws.forAll(draws -> {
            Volume cleared = Volume.ofCubicMeters(draws.between(5, 500));
            Density fresh = Density.ofKilogramsPerCubicMeter(draws.between(40, 200));
            Density settled = Density.ofKilogramsPerCubicMeter(draws.between(200, 500));
            Length ridge = draws.meters(5, 200);
            double h = SnowCover.ridgeHeight(cleared, fresh, settled, ridge).si();
            double mass = cleared.si() * fresh.si();
            assertEquals(mass, h * h * ridge.si() * settled.si(), 1e-6 * mass);
        });
    }

    /** 5 ft wide, 1 ft deep, 1 mph, 12 lb/ft3: 158 short tons an hour, 39.9 kg/s. Arithmetic. */
    @Test
    void aBlowerMovesWhatItDrivesInto() {
        MassRate rate = SnowBlower.rate(
                Length.ofFeet(5), Length.ofFeet(1), Speed.ofMph(1), Density.ofPoundsPerCubicFoot(12));
        assertEquals(158, rate.toShortTonsPerHour(), 0.5);
        assertEquals(39.9, rate.toKilogramsPerSecond(), 0.05);
    }

    /** Thrown at 15 m/s that is 4.5 kW, at 30 to 40 % efficiency 11 to 15 kW. Mechanics. */
    @Test
    void throwingTakesKineticPowerOverEfficiency() {
        MassRate rate = MassRate.ofKilogramsPerSecond(39.9);
        Speed speed = Speed.ofMetersPerSecond(15);
        assertEquals(4.5, SnowBlower.throwPower(rate, speed, Ratio.ofPercent(100)).toKilowatts(), 0.05);
        Power low = SnowBlower.throwPower(rate, speed, Ratio.ofPercent(40));
        Power high = SnowBlower.throwPower(rate, speed, Ratio.ofPercent(30));
        assertEquals(11, low.toKilowatts(), 0.5);
        assertEquals(15, high.toKilowatts(), 0.5);
        assertTrue(high.si() < ImplementPower.SNOW_BLOWER.needed(Length.ofFeet(5)).low().si());
    }

    @Test
    void passesAreTheFewestThatCoverTheDrive() {
        Draws.forAll(draws -> {
            Length drive = draws.meters(2.5, 30);
            Length blade = draws.meters(1.2, 2.4);
            Angle angle = Angle.ofDegrees(draws.between(0, 45));
            Length overlap = draws.meters(0, 0.3);
            int passes = AngledBlade.passes(drive, blade, angle, overlap);
            double path = AngledBlade.path(blade, angle).si();
            assertTrue(passes * path - (passes - 1) * overlap.si() >= drive.si() - 1e-6);
            int fewer = passes - 1;
            assertTrue(fewer == 0 || fewer * path - (fewer - 1) * overlap.si() < drive.si() + 1e-6);
        });
    }

    /** The path should stay 6 in wider than the wheels on each side: a snow plow's operator's manual. */
    @Test
    void anAngledBladeMayBecomeNarrowerThanTheWheels() {
        Length path = AngledBlade.path(Length.ofInches(60), Angle.ofDegrees(35));
        Length beside = AngledBlade.besideWheels(path, Length.ofInches(50));
        assertEquals(6, AngledBlade.BESIDE_WHEELS.toInches(), 1e-9);
        assertTrue(beside.si() < 0);
    }

    /** 84 in doors and newer 96 in ones: an engineering page; 2 in of margin is common practice, no source. */
    @Test
    void aCabDoesNotPassASevenFootDoorAndAFoldedBarDoes() {
        Length door = Length.ofInches(84);
        Length margin = DoorFit.USUAL_MARGIN;
        assertEquals(-10, DoorFit.above(door, Length.ofInches(92), margin).toInches(), 1e-9);
        assertEquals(10, DoorFit.above(door, Length.ofInches(72), margin).toInches(), 1e-9);
        assertEquals(4, DoorFit.beside(Length.ofInches(72), Length.ofInches(60), margin).toInches(), 1e-9);
    }

    /** Every point of the tractor stays within the circle: points of its outline turned about the center. */
    @Test
    void theTurningCircleHoldsTheWholeTractor() {
        Draws.forAll(draws -> {
            double b = draws.between(1.3, 2.2);
            double steering = Math.toRadians(draws.between(30, 60));
            double track = draws.between(0.8, 1.6);
            double width = draws.between(track, 2.2);
            double reach = draws.between(0, 2);
            Length radius = TurningSpace.radius(
                    new Length(b), new Angle(steering), new Length(track), new Length(width), new Length(reach));
            double center = b / Math.tan(steering) + track / 2;
            for (double[] corner : new double[][] {{-width / 2, b + reach}, {width / 2, b + reach}, {-width / 2, 0}}) {
                assertTrue(Math.hypot(center - corner[0], corner[1]) <= radius.si() + 1e-9);
            }
            double inner = b / Math.hypot(b, center - track / 2);
            assertEquals(Math.sin(steering), inner, 1e-9);
        });
    }

    @Test
    void lengthIsWheelbaseAndBothReaches() {
        Length length = TurningSpace.length(Length.ofInches(65), Length.ofInches(60), Length.ofInches(50));
        assertEquals(175, length.toInches(), 1e-9);
    }

    @Test
    void refusesDeepSnowAndSharpBlades() {
        assertThrows(OutOfRangeException.class, () -> SnowCover.volume(Area.ofAcres(1), Length.ofFeet(10)));
        assertThrows(OutOfRangeException.class, () -> AngledBlade.path(Length.ofFeet(6), Angle.ofDegrees(60)));
        assertThrows(OutOfRangeException.class, () -> AngledBlade.passes(
                Length.ofFeet(12), Length.ofFeet(6), Angle.ofDegrees(0), Length.ofFeet(4)));
    }
}
