package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Flow;
import fencerow.terms.Force;
import fencerow.terms.Length;
import fencerow.terms.Pressure;
import fencerow.terms.Ratio;
import fencerow.terms.UnitOfMeasure;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class HydraulicsTest {

    private static final Cylinder SIX_INCH =
            new Cylinder(Length.ofInches(6), Length.ofInches(3), Length.ofInches(24));

    /** Bore of 6 in, 28.26 in2 with pi as 3.14; 0.1 % for that: a fluid-power distributor's handbook. */
    @Test
    void areaAndForcesOfTheHandbookCylinder() {
        double area = SIX_INCH.pushArea().si() / (0.0254 * 0.0254);
        assertEquals(28.26, area, 0.03);
        assertEquals(70_650, SIX_INCH.push(Pressure.ofPsi(2500)).toPoundsForce(), 71);
        assertEquals(1769.29, SIX_INCH.pressureFor(Force.ofPoundsForce(50_000)).toPsi(), 1.8);
    }

    /** The trade's forms: psi x gpm / 1714; 231 gpm / (60 in2); 0.3208 gpm / in2 in ft/s. */
    @Test
    void agreesWithTheFormsInPsiAndGpm() {
        Draws.forAll(draws -> {
            double psi = draws.between(500, 4000);
            double gpm = draws.between(1, 30);
            double power = HydraulicPower.of(Pressure.ofPsi(psi), Flow.ofGpm(gpm)).toHorsepower();
            assertEquals(psi * gpm / 1714, power, 0.0005 * power);
            double in2 = SIX_INCH.pushArea().si() / (0.0254 * 0.0254);
            double speed = SIX_INCH.outSpeed(Flow.ofGpm(gpm)).si();
            assertEquals(231 * gpm / (60 * in2), UnitOfMeasure.INCH_PER_SECOND.fromSi(speed), 1e-9);
            assertEquals(0.3208 * gpm / in2, UnitOfMeasure.FOOT_PER_SECOND.fromSi(speed), 1e-4);
        });
    }

    @Test
    void theRodSideIsWeakerAndFaster() {
        Flow flow = Flow.ofGpm(6);
        Pressure pressure = Pressure.ofPsi(2500);
        assertEquals(0.75, SIX_INCH.pull(pressure).si() / SIX_INCH.push(pressure).si(), 1e-12);
        assertEquals(0.75, SIX_INCH.backTime(flow).si() / SIX_INCH.outTime(flow).si(), 1e-12);
        assertEquals(SIX_INCH.outTime(flow).si() + SIX_INCH.backTime(flow).si(), SIX_INCH.cycleTime(flow).si(), 1e-12);
    }

    @Test
    void theOilOfOneStrokeFillsItInTheTimeItTakes() {
        Draws.forAll(draws -> {
            Flow flow = Flow.ofGpm(draws.between(1, 20));
            assertEquals(SIX_INCH.pushVolume().si(), flow.si() * SIX_INCH.outTime(flow).si(), 1e-12);
        });
    }

    /** 4 in bore, 2,500 psi, 6 gpm: 15.7 short tons, 110.3 in a minute. Arithmetic. */
    @Test
    void logSplitterOnACompactTractor() {
        Cylinder splitter = new Cylinder(Length.ofInches(4), Length.ofInches(2), Length.ofInches(24));
        assertEquals(15.7, splitter.push(Pressure.ofPsi(2500)).toPoundsForce() / 2000, 0.05);
        double inchesAMinute = 60 * UnitOfMeasure.INCH_PER_SECOND.fromSi(splitter.outSpeed(Flow.ofGpm(6)).si());
        assertEquals(110.3, inchesAMinute, 0.05);
    }

    @Test
    void drivingAPumpTakesMoreThanTheOilHolds() {
        Pressure pressure = Pressure.ofPsi(2500);
        double oil = HydraulicPower.of(pressure, Flow.ofGpm(6)).si();
        assertEquals(oil / 0.8, HydraulicPower.toDrive(pressure, Flow.ofGpm(6), Ratio.ofPercent(80)).si(), 1e-9);
    }

    /** Circuits by tool: common practice, no source; a coupler pair is one circuit by ISO 5675 (preview). */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "GRAPPLE, 1, 0", "GRAPPLE_TWO_LIDS, 2, 0", "ANGLING_BLADE, 1, 0", "V_BLADE, 2, 0", "TOP_LINK, 0, 1",
        "SIDE_LINK, 0, 1", "LOG_SPLITTER, 0, 1", "CHIPPER_FEED, 0, 1", "BLOWER_CHUTE_AND_DEFLECTOR, 0, 2",
        "POST_DRIVER, 0, 1", "HYDRAULIC_AUGER, 1, 0", "BACKHOE, 0, 0"
    })
    void circuitsOfATool(HydraulicTool tool, int front, int rear) {
        assertEquals(front, tool.front());
        assertEquals(rear, tool.rear());
    }

    @Test
    void toolsAtOnceAddUpAndOneAtATimeDoNot() {
        List<HydraulicTool> tools =
                List.of(HydraulicTool.GRAPPLE, HydraulicTool.TOP_LINK, HydraulicTool.SIDE_LINK, HydraulicTool.BACKHOE);
        Circuits together = Circuits.atOnce(tools);
        Circuits apart = Circuits.oneAtATime(tools);
        assertEquals(List.of(1, 2), List.of(together.front(), together.rear()));
        assertEquals(List.of(1, 1), List.of(apart.front(), apart.rear()));
        Set<HydraulicTool.Need> needs = Set.of(HydraulicTool.Need.LOAD_HOLDING, HydraulicTool.Need.POWER_BEYOND);
        assertEquals(needs, together.needs());
        assertEquals(needs, apart.needs());
    }

    /** A farm poppet's male valve opens with at most 45 N (ISO 5675); flat faces run at 20 to 31.5 MPa (ISO 16028). */
    @Test
    void couplersOfDifferentKindsDoNotFit() {
        assertTrue(Coupler.ISO_5675.fits(Coupler.ISO_7241_A));
        assertFalse(Coupler.ISO_5675.fits(Coupler.ISO_16028));
        assertFalse(Coupler.ISO_7241_A.fits(Coupler.ISO_7241_B));
        assertEquals(45, Coupler.FARM_VALVE_OPENING.toNewtons());
        assertEquals(200, Coupler.ISO_16028.pressure().orElseThrow().low().toBar(), 1e-9);
        assertEquals(31.5e6, Coupler.ISO_16028.pressure().orElseThrow().high().toPascals(), 1e-3);
        assertTrue(Coupler.ISO_5675.pressure().isEmpty());
    }

    @Test
    void refusesARodThatFillsItsBore() {
        assertThrows(OutOfRangeException.class,
                () -> new Cylinder(Length.ofInches(4), Length.ofInches(4), Length.ofInches(24)));
        assertThrows(OutOfRangeException.class, () -> SIX_INCH.push(Pressure.ofPsi(20_000)));
    }
}
