package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Angle;
import fencerow.terms.Force;
import fencerow.terms.Length;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Spread;
import java.util.Arrays;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PowerTest {

    /** Converting tractor power ratings, an agricultural engineering textbook: 86 % from engine to PTO. */
    @Test
    void textbookEngineOf125GivesPtoOf107AndAHalf() {
        assertEquals(107.5, PtoPower.fromEngine(Power.ofHorsepower(125)).toHorsepower(), 1e-9);
    }

    /** The same textbook: 86 % from PTO to drawbar, so that 50 hp at the drawbar ask for 58.1. */
    @Test
    void fiftyAtTheDrawbarAsksForFiftyEightAtThePto() {
        Power pto = PtoPower.fromDrawbar(Power.ofHorsepower(50));
        assertEquals(58.1, pto.toHorsepower(), 0.05);
        assertEquals(50, PtoPower.toDrawbar(pto).toHorsepower(), 1e-9);
    }

    /** One gear tractor in the trade press has 94 of 102 hp at the PTO; its loss of 8 % is near the gear band's end. */
    @Test
    void shareByTransmissionHoldsTheTextbook() {
        Ratio textbook = PtoPower.TEXTBOOK_SHARE;
        assertTrue(Transmission.GEAR.ptoShare().contains(textbook));
        Spread<Power> hydrostatic = PtoPower.fromEngine(Power.ofHorsepower(25), Transmission.HYDROSTATIC);
        assertEquals(18.75, hydrostatic.low().toHorsepower(), 1e-9);
        assertEquals(21.25, hydrostatic.high().toHorsepower(), 1e-9);
    }

    /** About 3 % for 1,000 ft without a turbocharger: from memory. */
    @Test
    void altitudeTakesThreePercentForAThousandFeet() {
        Power high = PtoPower.atAltitude(Power.ofHorsepower(20), Length.ofFeet(5000));
        assertEquals(17, high.toHorsepower(), 1e-9);
    }

    /** Power a foot of width, light to heavy: common practice, no source; the cutter also a buyer's guide. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "rotary-cutter, 4, 7, true", "finish-mower, 4, 5, true", "flail-mower, 6, 8, true", "rotary-tiller, 5, 7, true",
        "snow-blower, 5, 8, true", "rotary-broom, 3, 5, true", "box-blade, 5, 6, false",
        "landscape-rake, 3, 5, false", "rear-blade, 4, 5, false"
    })
    void powerForEachFootOfWidth(String id, double light, double heavy, boolean atPto) {
        ImplementPower implement = Arrays.stream(ImplementPower.values())
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
        Spread<Power> needed = implement.needed(Length.ofFeet(5));
        assertEquals(5 * light, needed.low().toHorsepower(), 1e-9);
        assertEquals(5 * heavy, needed.high().toHorsepower(), 1e-9);
        assertEquals(atPto, implement.isAtPto());
    }

    /** A buyer's guide has 16-25, 20-30 and 25-40 PTO hp for 4, 5 and 6 ft cutters; ours holds each band's middle. */
    @ParameterizedTest
    @CsvSource({"4, 16, 25", "5, 20, 30", "6, 25, 40"})
    void brushCutterBandsHoldTheBuyersGuide(double feet, double low, double high) {
        Spread<Power> needed = ImplementPower.ROTARY_CUTTER.needed(Length.ofFeet(feet));
        assertEquals(low, needed.low().toHorsepower(), 1);
        assertTrue(needed.high().toHorsepower() >= high);
    }

    @Test
    void theWidthDrivenIsTheWidthThatNeedsThatPower() {
        Draws.forAll(draws -> {
            Power power = Power.ofHorsepower(draws.between(10, 80));
            for (ImplementPower implement : ImplementPower.values()) {
                Spread<Length> widths = implement.widthDriven(power);
                if (widths.low().toFeet() >= 2 && widths.high().toFeet() <= 15) {
                    assertEquals(power.si(), implement.needed(widths.low()).high().si(), 1e-6);
                    assertEquals(power.si(), implement.needed(widths.high()).low().si(), 1e-6);
                }
            }
        });
    }

    /** Chippers by throat and diggers by auger: common practice, no source. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "WOOD_CHIPPER_4_IN, 15, 25", "WOOD_CHIPPER_6_IN, 20, 45", "POST_HOLE_DIGGER_9_IN, 15, 25",
        "POST_HOLE_DIGGER_12_IN, 20, 35"
    })
    void powerOfToolsWithoutWidth(ToolPower tool, double low, double high) {
        assertEquals(low, tool.needed().low().toHorsepower(), 1e-9);
        assertEquals(high, tool.needed().high().toHorsepower(), 1e-9);
    }

    /** ASAE D497 rotary power in kW/m and hp/ft: from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "SICKLE_MOWER, 1.2, 0.5", "DISC_MOWER, 5.0, 2.04", "FLAIL_MOWER, 10.0, 4.1", "DISC_MOWER_CONDITIONER, 8.0, 3.3"
    })
    void averagePowerOfHayTools(RotaryPower tool, double kilowattsPerMeter, double horsepowerPerFoot) {
        assertEquals(2 * kilowattsPerMeter, tool.needed(Length.ofMeters(2)).toKilowatts(), 1e-9);
        assertEquals(6 * horsepowerPerFoot, tool.needed(Length.ofFeet(6)).toHorsepower(), 0.2);
    }

    /** ASAE D497 draft, from memory: D = F (A + B S + C S^2) W T, S in km/h, W in m or tools, T in cm. */
    @ParameterizedTest(name = "{0} in {1} soil")
    @CsvSource({
        "MOLDBOARD_PLOW, FINE, 652, 0, 5.1, 1.0, 0.40", "MOLDBOARD_PLOW, MEDIUM, 652, 0, 5.1, 0.70, 0.40",
        "MOLDBOARD_PLOW, COARSE, 652, 0, 5.1, 0.45, 0.40", "CHISEL_PLOW, FINE, 91, 5.4, 0, 1.0, 0.50",
        "CHISEL_PLOW, MEDIUM, 91, 5.4, 0, 0.85, 0.50", "CHISEL_PLOW, COARSE, 91, 5.4, 0, 0.65, 0.50",
        "TANDEM_DISK, MEDIUM, 309, 16, 0, 0.88, 0.50", "TANDEM_DISK, COARSE, 309, 16, 0, 0.78, 0.50",
        "SUBSOILER, FINE, 226, 0, 1.8, 1.0, 0.50"
    })
    void draftOfTillage(Draft tool, Draft.Soil soil, double a, double b, double c, double f, double stray) {
        double s = 6;
        double newtons = f * (a + b * s + c * s * s) * 2 * 20;
        Spread<Force> pull = tool.pull(soil, Speed.ofKilometersPerHour(s), 2, Length.ofMillimeters(200));
        assertEquals(newtons * (1 - stray), pull.low().si(), 1e-6);
        assertEquals(newtons * (1 + stray), pull.high().si(), 1e-6);
        assertEquals(newtons * (1 + stray) * s / 3.6,
                Draft.drawbarPower(pull.high(), Speed.ofKilometersPerHour(s)).si(), 1e-6);
    }

    /** 540 rpm is 9 turns a second, 1,000 rpm 16.6: Safety information, Clemson University, January 2022. */
    @Test
    void turnsInASecond() {
        assertEquals(9, PtoType.TYPE_1.turnsPerSecond(), 1e-12);
        assertEquals(16.6, PtoType.TYPE_2.turnsPerSecond(), 0.07);
    }

    /** Joint life at 60 hp, 540 rpm, medium series: a rear snow blower's operator's manual, p. 4. */
    @ParameterizedTest
    @CsvSource({"5, 450", "10, 195", "15, 90", "20, 40", "25, 20"})
    void jointLife(double degrees, double hours) {
        assertEquals(hours, DrivelineAngle.life(Angle.ofDegrees(degrees)).toHours(), 1e-6);
    }

    @Test
    void aSteeperJointLastsLess() {
        Draws.forAll(draws -> {
            double degrees = draws.between(5, 24);
            assertTrue(DrivelineAngle.life(Angle.ofDegrees(degrees + 1)).si()
                    < DrivelineAngle.life(Angle.ofDegrees(degrees)).si());
        });
    }

    @Test
    void refusesWhatIsNoTractor() {
        assertThrows(OutOfRangeException.class, () -> PtoPower.fromEngine(Power.ofHorsepower(2)));
        assertThrows(OutOfRangeException.class, () -> ImplementPower.SNOW_BLOWER.needed(Length.ofFeet(30)));
        assertThrows(OutOfRangeException.class, () -> DrivelineAngle.life(Angle.ofDegrees(40)));
        assertThrows(OutOfRangeException.class,
                () -> DrivelineAngle.of(Length.ofInches(30), Length.ofInches(40)));
        assertThrows(IllegalArgumentException.class, () -> Draft.CHISEL_PLOW.pull(
                Draft.Soil.FINE, Speed.ofMph(3), 40, Length.ofInches(8)));
    }

    /** Hitch bands overlap: at 43 hp a tractor may be category 1 or 2. */
    @Test
    void overlappingHitchBandsGiveBothCategories() {
        assertEquals(Set.of(HitchCategory.CATEGORY_1, HitchCategory.CATEGORY_2),
                Set.copyOf(HitchCategory.forPower(Power.ofHorsepower(43))));
        assertTrue(HitchCategory.forPower(Power.ofHorsepower(250)).isEmpty());
        assertTrue(HitchCategory.CATEGORY_2.takesPin(HitchCategory.CATEGORY_1.lowerPin()));
        assertTrue(!HitchCategory.CATEGORY_1.takesPin(HitchCategory.CATEGORY_2.lowerPin()));
    }
}
