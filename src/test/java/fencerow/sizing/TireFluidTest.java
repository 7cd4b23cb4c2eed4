package fencerow.sizing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.Temperature;
import fencerow.terms.Volume;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TireFluidTest {

    /** Share of calcium chloride by weight at 2, 3.5 and 5 lb of 77 % flake a gallon: arithmetic. */
    @ParameterizedTest
    @CsvSource({"2, 14.9", "3.5, 22.8", "5, 28.9", "0, 0"})
    void calciumChlorideByWeight(double pounds, double percent) {
        assertEquals(percent, TireFluid.calciumChloride(pounds).toPercent(), 0.05);
    }

    /** The strongest useful mix stays below the eutectic at 29.8 %: FHWA-RD-95-202, appendix A. */
    @Test
    void fivePoundsAGallonStaysBelowTheEutectic() {
        assertTrue(TireFluid.calciumChloride(5).toPercent() < 29.8);
        assertTrue(TireFluid.calciumChloride(6).toPercent() > 29.8);
    }

    /** Manuals call 1, 1.5 and 2.25 kg per 4 L "2, 3.5 and 5 lb per gallon"; exactly they are 2.1, 3.1 and 4.7. */
    @ParameterizedTest
    @CsvSource({"1, 2.1", "1.5, 3.1", "2.25, 4.7"})
    void flakeStrengthAsTractorManualsRoundIt(double kilogramsInFourLiters, double poundsPerGallon) {
        Density flake = Density.ofKilogramsPerCubicMeter(kilogramsInFourLiters / 0.004);
        assertEquals(poundsPerGallon, flake.toPoundsPerGallon(), 0.05);
    }

    /** A hydrometer note: specific gravity 1.322 is 11.03 lb a gallon. */
    @Test
    void specificGravityOfStrongBrine() {
        assertEquals(11.03, 1.322 * Fluid.WATER.density().toPoundsPerGallon(), 0.005);
    }

    /** Half ethylene glycol weighs 8.9 to 9.0, not the 9.4 of undiluted glycol that trade pages print. */
    @Test
    void glycolMixIsNotAsHeavyAsUndilutedGlycol() {
        double mix = Fluid.ETHYLENE_GLYCOL_50.density().toPoundsPerGallon();
        assertTrue(mix >= 8.9 && mix <= 9.0);
    }

    /** The estimate from sizes within 15 % of charted tires; sizes on the sidewall and diameters from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "12.4-24, 45.7, 24, 12.4", "13.6-28, 51.8, 28, 13.6", "16.9-28, 56.8, 28, 16.9", "11.2-24, 43.3, 24, 11.2",
        "9.5-16, 32.6, 16, 9.5"
    })
    void estimateAgreesWithTheChart(String label, double overall, double rim, double section) {
        Volume estimate =
                TireFluid.estimate(Length.ofInches(overall), Length.ofInches(rim), Length.ofInches(section));
        double charted = TireSize.find(label).orElseThrow().fill().toUsGallons();
        assertEquals(charted, estimate.toUsGallons(), 0.15 * charted);
    }

    /** 41x14-20: 29 US gallons (24 to 33), as estimated by hand. */
    @Test
    void estimateOfATireThatIsInNoChart() {
        Volume estimate = TireFluid.estimate(Length.ofInches(41), Length.ofInches(20), Length.ofInches(14));
        assertEquals(29, estimate.toUsGallons(), 0.5);
        assertTrue(TireSize.find("41x14-20").orElseThrow().fillRange().contains(estimate));
    }

    @Test
    void rangesAreAsWideAsTheyAreHonest() {
        TireSize charted = TireSize.find("12.4-24").orElseThrow();
        TireSize estimated = TireSize.find("15-19.5").orElseThrow();
        assertEquals(0.92 * 30, charted.fillRange().low().toUsGallons(), 1e-9);
        assertEquals(1.15 * 29, estimated.fillRange().high().toUsGallons(), 1e-9);
    }

    @Test
    void waterFreezesInAnyWinterAndBeetJuiceInNone() {
        assertFalse(Fluid.WATER.staysLiquidAt(Temperature.ofFahrenheit(20)));
        assertTrue(Fluid.BEET_JUICE.staysLiquidAt(Temperature.ofFahrenheit(-30)));
    }

    @Test
    void refusesNoTiresAndTooStrongAMix() {
        TireSize size = TireSize.find("12.4-24").orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> TireFluid.volume(size, 0));
        assertThrows(IllegalArgumentException.class, () -> TireFluid.calciumChloride(9));
        assertThrows(IllegalArgumentException.class, () -> TireFluid.calciumChloride(Double.NaN));
        assertThrows(OutOfRangeException.class,
                () -> TireFluid.estimate(Length.ofInches(40), Length.ofInches(44), Length.ofInches(12)));
        assertTrue(TireSize.find("99-99").isEmpty());
    }
}
