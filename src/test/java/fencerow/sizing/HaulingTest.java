package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HaulingTest {

    private static Mass limit(String kind, String size) {
        return WorkingLoadLimit.find(kind, size).orElseThrow().limit();
    }

    /** 49 CFR 393.106(d): half of a direct tie-down's limit counts, and the sum must be half the load. */
    @Test
    void fourDirectChainsHoldTwiceHalfTheirLimits() {
        TieDown chain = new TieDown(limit("chain-g70", "5/16"), TieDown.Run.DIRECT);
        assertEquals(18_800, TieDown.holds(Collections.nCopies(4, chain)).toPounds(), 1e-6);
        assertEquals(9400, 4 * chain.counted().toPounds(), 1e-6);
        TieDown strap = new TieDown(limit("webbing", "2"), TieDown.Run.DIRECT);
        assertEquals(8000, TieDown.holds(Collections.nCopies(4, strap)).toPounds(), 1e-6);
    }

    /** 49 CFR 393.106(d): all of the limit counts where it runs over to the other side. */
    @Test
    void acrossTheLoadAllOfTheLimitCounts() {
        Mass strap = limit("webbing", "4");
        assertEquals(4000, new TieDown(strap, TieDown.Run.ACROSS).counted().toPounds(), 1e-6);
        assertEquals(2000, new TieDown(strap, TieDown.Run.SAME_SIDE).counted().toPounds(), 1e-6);
        TieDown across = new TieDown(strap, TieDown.Run.ACROSS);
        TieDown direct = new TieDown(strap, TieDown.Run.DIRECT);
        assertEquals(12_000, TieDown.holds(List.of(across, direct)).toPounds(), 1e-6);
    }

    /** 49 CFR 393.110: 12 ft as counted by a carrier, the others by the rule's text. */
    @ParameterizedTest(name = "{0} ft, {1} lb, blocked {2}")
    @CsvSource({
        "12, 2000, false, 3", "5, 1100, false, 1", "5, 1101, false, 2", "8, 500, false, 2", "10, 2000, false, 2",
        "20, 2000, false, 3", "21, 2000, false, 4", "30, 2000, false, 4", "12, 2000, true, 2", "10, 2000, true, 1",
        "4, 100, true, 1"
    })
    void tieDownsByLength(double feet, double pounds, boolean blocked, int expected) {
        assertEquals(expected, TieDown.numberByLength(Length.ofFeet(feet), Mass.ofPounds(pounds), blocked));
    }

    /** 49 CFR 393.130, from memory: four for machinery of 10,000 lb and more. */
    @Test
    void heavyMachineryTakesFour() {
        assertEquals(4, TieDown.numberForMachinery(Mass.ofPounds(10_000)));
        assertEquals(0, TieDown.numberForMachinery(Mass.ofPounds(9999)));
    }

    @Test
    void theNumberByStrengthIsTheSmallestThatHolds() {
        Draws.forAll(draws -> {
            Mass load = Mass.ofPounds(draws.between(500, 20_000));
            TieDown each = new TieDown(Mass.ofPounds(draws.between(500, 5000)), TieDown.Run.DIRECT);
            int number = each.numberByStrength(load);
            assertTrue(TieDown.holds(Collections.nCopies(number, each)).si() >= load.si() - 1e-6);
            assertTrue(TieDown.holds(Collections.nCopies(number - 1, each)).si() < load.si());
        });
    }

    /** Tractor 3,000, loader 900, liquid 500, cutter 600 on a trailer of 2,200 rated 7,000 lb: 200 over. Arithmetic. */
    @Test
    void anOrdinaryLoadIsOverAnOrdinaryTrailer() {
        TrailerLoad load = TrailerLoad.of(
                Mass.ofPounds(2200), Mass.ofPounds(3000), Mass.ofPounds(900), Mass.ofPounds(500), Mass.ofPounds(600));
        assertEquals(5000, load.load().toPounds(), 1e-6);
        assertEquals(7200, load.gross().toPounds(), 1e-6);
        assertEquals(-200, load.trailerMargin(Mass.ofPounds(7000)).toPounds(), 1e-6);
        assertEquals(720, load.tongue().low().toPounds(), 1e-6);
        assertEquals(1080, load.tongue().high().toPounds(), 1e-6);
        assertEquals(8000 - 6000 - 1080, load.vehicleMargin(Mass.ofPounds(6000), Mass.ofPounds(8000)).toPounds(), 1e-6);
        assertEquals(14_000 - 13_200,
                load.combinationMargin(Mass.ofPounds(6000), Mass.ofPounds(14_000)).toPounds(), 1e-6);
        assertEquals(TrailerHitch.CLASS_4, TrailerHitch.forGross(load.gross()).orElseThrow());
        assertTrue(TrailerHitch.forGross(Mass.ofPounds(10_001)).isEmpty());
    }

    /** Definition of group A as quoted in a carriers' bulletin: 26,001 lb together and a trailer over 10,000 lb. */
    @ParameterizedTest(name = "{0} + {1} lb")
    @CsvSource({
        "14000, 12000, false, false", "14000, 14000, true, false", "26000, 10000, false, false",
        "26001, 10000, false, true", "26001, 10001, true, false"
    })
    void commercialLicense(double vehicle, double trailer, boolean groupA, boolean groupB) {
        assertEquals(groupA, CommercialLicense.needsGroupA(Mass.ofPounds(vehicle), Mass.ofPounds(trailer)));
        assertEquals(groupB, CommercialLicense.needsGroupB(Mass.ofPounds(vehicle), Mass.ofPounds(trailer)));
    }

    /** Motor-carrier rules start at 10,001 lb, alone or together. */
    @Test
    void motorCarrierRulesStartAboveTenThousandPounds() {
        assertFalse(CommercialLicense.isMotorCarrier(Mass.ofPounds(6000), Mass.ofPounds(4000)));
        assertTrue(CommercialLicense.isMotorCarrier(Mass.ofPounds(6000), Mass.ofPounds(4001)));
    }

    @Test
    void refusesALoadThatIsNone() {
        assertThrows(OutOfRangeException.class, () -> TrailerLoad.of(Mass.ofPounds(-1)));
        assertThrows(OutOfRangeException.class,
                () -> TieDown.numberByLength(Length.ofFeet(100), Mass.ofPounds(1000), false));
    }
}
