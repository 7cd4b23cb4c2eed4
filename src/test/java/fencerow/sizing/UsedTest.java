package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Time;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class UsedTest {

    /** Homes 50 to 150, small businesses 200 to 400 hours a year: common practice, no source. */
    @Test
    void hoursInAYear() {
        Time home = UsedHours.perYear(Time.ofHours(800), Time.ofYears(8));
        assertEquals(100, home.toHours(), 1e-9);
        assertTrue(UsedHours.HOME.contains(home));
        assertTrue(UsedHours.BUSINESS.contains(UsedHours.perYear(Time.ofHours(2400), Time.ofYears(8))));
    }

    @Test
    void serviceFallsDueItsIntervalAfterTheLastOne() {
        Time interval = Time.ofHours(200);
        assertEquals(50, UsedHours.untilService(Time.ofHours(800), Time.ofHours(650), interval).toHours(), 1e-9);
        assertEquals(-100, UsedHours.untilService(Time.ofHours(800), Time.ofHours(500), interval).toHours(), 1e-9);
        assertThrows(OutOfRangeException.class,
                () -> UsedHours.untilService(Time.ofHours(800), Time.ofHours(900), interval));
    }

    /** 13.5 to 14.5 V accepted, doubted below 13.3 and above 15.2: farm press and two engine manuals. */
    @ParameterizedTest
    @CsvSource({
        "14.0, GOOD", "13.5, GOOD", "14.5, GOOD", "13.4, DOUBTFUL", "13.3, DOUBTFUL", "13.2, LOW", "12.65, LOW",
        "15.0, DOUBTFUL", "15.2, DOUBTFUL", "15.3, HIGH"
    })
    void chargingVoltage(double volts, BatteryState state) {
        assertEquals(state, BatteryState.running(volts));
        assertEquals(12.65, BatteryState.RESTED_VOLTS);
    }

    /** 28.4 mm in 15 min is 9.5 mm in 5: service manual of a compact loader. */
    @Test
    void driftLimitScalesWithTheTimeWaited() {
        double millimeters = CylinderDrift.COMPACT_LOADER_SMALL.limitIn(Time.ofMinutes(5)).toMillimeters();
        assertEquals(28.4 / 3, millimeters, 1e-9);
    }

    /** Halving of the time: every 5 dB by OSHA, every 3 dB by NIOSH. */
    @Test
    void anExchangeRateHalvesTheTime() {
        Draws.forAll(draws -> {
            double level = draws.between(80, 120);
            double legal = NoiseExposure.OSHA.allowed(level).si();
            double advised = NoiseExposure.NIOSH.allowed(level).si();
            assertEquals(legal, 2 * NoiseExposure.OSHA.allowed(level + 5).si(), 1e-6);
            assertEquals(advised, 2 * NoiseExposure.NIOSH.allowed(level + 3).si(), 1e-6);
        });
    }

    @Test
    void refusesVoltagesAndNoiseThatAreNone() {
        assertThrows(IllegalArgumentException.class, () -> BatteryState.running(48));
        assertThrows(IllegalArgumentException.class, () -> BatteryState.running(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> NoiseExposure.OSHA.allowed(140));
    }
}
