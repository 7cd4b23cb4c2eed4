package fencerow.terms;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class UnitOfMeasureTest {

    /** Factors of NIST Special Publication 811, appendix B, to the digits printed there: from memory. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "INCH, 2.54e-2, 0", "FOOT, 3.048e-1, 0", "MILE, 1.609344e3, 0", "POUND, 4.5359237e-1, 0",
        "SHORT_TON, 9.071847e2, 1e-7", "SQUARE_FOOT, 9.290304e-2, 0", "US_GALLON, 3.785412e-3, 1e-7",
        "CUBIC_FOOT, 2.831685e-2, 1e-7", "CUBIC_YARD, 7.645549e-1, 1e-7", "HORSEPOWER, 7.456999e2, 1e-7",
        "US_GALLON_PER_MINUTE, 6.309020e-5, 1e-7", "MILE_PER_HOUR, 4.4704e-1, 0",
        "KILOMETER_PER_HOUR, 2.777778e-1, 1e-7",
        "FOOT_PER_MINUTE, 5.08e-3, 0", "POUND_FORCE, 4.448222, 1e-7", "POUND_FORCE_PER_SQUARE_INCH, 6.894757e3, 1e-7",
        "BAR, 1e5, 0", "FOOT_POUND_FORCE, 1.355818, 1e-7", "INCH_POUND_FORCE, 1.129848e-1, 1e-7",
        "POUND_PER_CUBIC_FOOT, 1.601846e1, 1e-7", "POUND_PER_CUBIC_YARD, 5.932764e-1, 1e-7",
        "POUND_PER_US_GALLON, 1.198264e2, 1e-7", "HECTARE, 1e4, 0", "DEGREE, 1.745329e-2, 1e-7", "DAY, 8.64e4, 0"
    })
    void hasTheFactorOfTheNationalStandardsInstitute(UnitOfMeasure unit, double factor, double tolerance) {
        assertEquals(factor, unit.toSi(1), (tolerance * 5 + 1e-15) * factor);
    }

    /** Water freezes at 32 F and 0 C and boils at 212 F and 100 C; the scales meet at -40. */
    @ParameterizedTest
    @CsvSource({"32, 0", "212, 100", "-40, -40"})
    void temperatureScalesAgree(double fahrenheit, double celsius) {
        assertEquals(celsius, Temperature.ofFahrenheit(fahrenheit).toCelsius(), 1e-9);
        assertEquals(fahrenheit, Temperature.ofCelsius(celsius).toFahrenheit(), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(UnitOfMeasure.class)
    void backAndForthGivesTheSame(UnitOfMeasure unit) {
        Random random = new Random(811);
        for (int i = 0; i < 200; i++) {
            double value = (random.nextDouble() - 0.3) * Math.pow(10, random.nextInt(7) - 2);
            double back = unit.fromSi(unit.toSi(value));
            assertEquals(value, back, 1e-12 * (Math.abs(value) + 500), () -> "seed 811: " + value);
            assertEquals(unit.toSi(value), unit.of(value).si());
            assertEquals(unit.dimension(), unit.of(value).dimension());
        }
    }

    /** 5,000 lb at 24 in are 120,000 in-lb: lift truck load composition, restated. */
    @Test
    void momentInInchPounds() {
        double moment = Force.ofPoundsForce(5000).si() * Length.ofInches(24).si();
        assertEquals(120_000, UnitOfMeasure.INCH_POUND_FORCE.fromSi(moment), 1e-6);
    }
}
