package fencerow.wording;

import static org.junit.jupiter.api.Assertions.assertDoesNotThrow;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Spread;
import fencerow.terms.UnitOfMeasure;
import java.util.List;
import java.util.Locale;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;

class QuantitiesTest {

    private static final Quantities US = new Quantities(Locale.US, false);
    private static final Quantities METRIC = new Quantities(Locale.US, true);
    private static final Quantities SPANISH = new Quantities(Locale.forLanguageTag("es"), true);

    @ParameterizedTest(name = "[{0}] is {2} {3}")
    @CsvSource(quoteCharacter = '|', value = {
        "3 ac, AREA, 3, ACRE", "0.5ha, AREA, 0.5, HECTARE", "2000 sq ft, AREA, 2000, SQUARE_FOOT",
        "500 ft2, AREA, 500, SQUARE_FOOT", "7 ft, LENGTH, 7, FOOT", "84 in, LENGTH, 84, INCH",
        "84\", LENGTH, 84, INCH", "7 ft 2 in, LENGTH, 86, INCH", "6'8\", LENGTH, 80, INCH", "6'8, LENGTH, 80, INCH",
        "7 ft 2, LENGTH, 86, INCH", "7ft2in, LENGTH, 86, INCH", "7 ft 2 1/2 in, LENGTH, 86.5, INCH",
        "1-3/8 in, LENGTH, 1.375, INCH", "7/8 in, LENGTH, 0.875, INCH", "1\u00bd in, LENGTH, 1.5, INCH",
        "6 pies 8 pulgadas, LENGTH, 80, INCH", "500 mm, LENGTH, 500, MILLIMETER", "1.2 m, LENGTH, 1.2, METER",
        "18 hp, POWER, 18, HORSEPOWER", "13.5 kW, POWER, 13.5, KILOWATT", "5.3 gpm, FLOW, 5.3, US_GALLON_PER_MINUTE",
        "20 L/min, FLOW, 20, LITER_PER_MINUTE", "4.6 gal/h, FLOW, 4.6, US_GALLON_PER_HOUR", "2 t, MASS, 2, TONNE",
        "2 tons, MASS, 2, SHORT_TON", "-200 lb, MASS, -200, POUND", "950 KG, MASS, 950, KILOGRAM",
        "45 min, TIME, 45, MINUTE", "2 h, TIME, 2, HOUR", "1 h 30 min, TIME, 90, MINUTE", "10 yr, TIME, 10, YEAR",
        "5 mph, SPEED, 5, MILE_PER_HOUR", "8 km/h, SPEED, 8, KILOMETER_PER_HOUR", "12 F, TEMPERATURE, 12, FAHRENHEIT",
        "-12 F, TEMPERATURE, -12, FAHRENHEIT", "-24 \u00b0C, TEMPERATURE, -24, CELSIUS",
        "2500 psi, PRESSURE, 2500, POUND_FORCE_PER_SQUARE_INCH", "180 bar, PRESSURE, 180, BAR",
        "80 ft-lb, TORQUE, 80, FOOT_POUND_FORCE", "1400 lbf, FORCE, 1400, POUND_FORCE",
        "6.2 lb/ft3, DENSITY, 6.2, POUND_PER_CUBIC_FOOT", "11 lb/gal, DENSITY, 11, POUND_PER_US_GALLON",
        "30 gal, VOLUME, 30, US_GALLON", "1 yd3, VOLUME, 1, CUBIC_YARD", "80 %, RATIO, 80, PERCENT",
        "80%, RATIO, 80, PERCENT", "0.8, RATIO, 0.8, ONE", "30 deg, ANGLE, 30, DEGREE", "30\u00b0, ANGLE, 30, DEGREE",
        "3.8 ac/h, WORK_RATE, 3.8, ACRE_PER_HOUR", "158 tons/h, MASS_RATE, 158, SHORT_TON_PER_HOUR",
        "18000 USD, MONEY, 18000, US_DOLLAR", "18000, MONEY, 18000, US_DOLLAR", "2, COUNT, 2, PIECE",
        "-$500, MONEY, -500, US_DOLLAR"
    })
    void readsWhatPeopleWrite(String text, Dimension dimension, double value, UnitOfMeasure unit) {
        Amount amount = US.parse(text, dimension);
        assertEquals(dimension, amount.dimension());
        assertEquals(unit.toSi(value), amount.si(), 1e-9 * (1 + Math.abs(unit.toSi(value))));
    }

    @Test
    void readsThousandsAndDecimalsOfTheLocale() {
        assertEquals(18_000, US.parse("$18,000", Dimension.MONEY).si(), 1e-9);
        assertEquals(1200, US.parse("1,200 kg", Dimension.MASS).si(), 1e-9);
        assertEquals(2.5, SPANISH.parse("2,5 kg", Dimension.MASS).si(), 1e-9);
        assertEquals(18_000.5, SPANISH.parse("18.000,50 USD", Dimension.MONEY).si(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> SPANISH.parse("2.5 kg", Dimension.MASS));
        assertThrows(IllegalArgumentException.class, () -> US.parse("2,5 kg", Dimension.MASS));
    }

    @ParameterizedTest(name = "[{0}]: {2}")
    @CsvSource(quoteCharacter = '|', value = {
        "||, LENGTH, nothing is given; give a length in m; mm; cm; in; ft; mi",
        "7, LENGTH, [7] has no unit; give a length in m; mm; cm; in; ft; mi",
        "3 lb, LENGTH, [lb] is a unit of mass; give a length in m; mm; cm; in; ft; mi",
        "3 smoots, LENGTH, [smoots] is no unit that is known here; give a length in m; mm; cm; in; ft; mi",
        "ft, LENGTH, [ft] does not begin with a number such as 2.5; give a length in m; mm; cm; in; ft; mi",
        "1/0 in, LENGTH, [1/0 in] divides by zero; give a length in m; mm; cm; in; ft; mi",
        "2 in 7 ft, LENGTH, [2 in 7 ft] has more than one part; give a length in m; mm; cm; in; ft; mi",
        "3 lb 2 lb, MASS, [3 lb 2 lb] has more than one part; give a mass in kg; g; t; lb; ton",
        "5 ac, COUNT, [ac] is a unit of area; give a count as a plain number",
        "-, AREA, [-] does not begin with a number such as 2.5; give an area in m\u00b2; ha; ft\u00b2; ac"
    })
    void saysWhatIsWrongAndWhichUnitsAreAllowed(String text, Dimension dimension, String message) {
        IllegalArgumentException wrong =
                assertThrows(IllegalArgumentException.class, () -> US.parse(text, dimension));
        String[] parts = message.split("; ", 2);
        assertEquals(parts[0] + "; " + parts[1].replace("; ", ", "), wrong.getMessage());
    }

    @ParameterizedTest(name = "[{0}]")
    @CsvSource({
        "3 to 5 mph, 3, 5", "3-5 mph, 3, 5", "3..5 mph, 3, 5", "3 mph to 5 mph, 3, 5", "3 a 5 mph, 3, 5", "4 mph, 4, 4",
        "2.5 - 4.5 mph, 2.5, 4.5"
    })
    void readsRanges(String text, double low, double high) {
        Spread<Amount> range = US.parseRange(text, Dimension.SPEED);
        assertEquals(UnitOfMeasure.MILE_PER_HOUR.toSi(low), range.low().si(), 1e-9);
        assertEquals(UnitOfMeasure.MILE_PER_HOUR.toSi(high), range.high().si(), 1e-9);
    }

    @Test
    void aFractionOfAnInchIsNoRange() {
        assertTrue(US.parseRange("1-3/8 in", Dimension.LENGTH).isExact());
        assertTrue(US.parseRange("-12 F", Dimension.TEMPERATURE).isExact());
        assertThrows(IllegalArgumentException.class, () -> US.parseRange("5 to 3 mph", Dimension.SPEED));
    }

    @ParameterizedTest(name = "{0} {1} is shown as [{2}] and [{3}]")
    @CsvSource(quoteCharacter = '|', value = {
        "84.2, INCH, 84 in, 2.14 m", "84.3, INCH, 84.5 in, 2.14 m", "0.875, INCH, 0.875 in, 22.2 mm",
        "12.54, FOOT, 12 ft 6.5 in, 3.82 m", "200, FOOT, 200 ft, 61 m", "1234, POUND, |1,230 lb|, 560 kg",
        "62, SHORT_TON, 62 tons, 56.2 t", "24.57, HORSEPOWER, 24.6 hp, 18.3 kW",
        "5.3, US_GALLON_PER_MINUTE, 5.3 gpm, 20.1 L/min", "1.76, US_GALLON_PER_HOUR, 1.76 gal/h, 6.66 L/h",
        "3, ACRE, 3 ac, 1.21 ha", "2000, SQUARE_FOOT, |2,000 ft\u00b2|, 186 m\u00b2", "45, MINUTE, 45 min, 45 min",
        "2.149, HOUR, 2.15 h, 2.15 h", "10, YEAR, 10 years, 10 years", "1, YEAR, 1 year, 1 year",
        "18, MONTH, 18 months, 18 months", "13.1, SECOND, 13.1 s, 13.1 s", "5, MILE_PER_HOUR, 5 mph, 8.05 km/h",
        "12, FAHRENHEIT, 12 \u00b0F, -11 \u00b0C", "2500, POUND_FORCE_PER_SQUARE_INCH, |2,500 psi|, 172 bar",
        "60, US_GALLON, 60 gal, 227 L", "3, CUBIC_YARD, 3 yd\u00b3, 2.29 m\u00b3", "0.8, ONE, 80%, 80%",
        "30, DEGREE, 30\u00b0, 30\u00b0", "3.777, ACRE_PER_HOUR, 3.78 ac/h, 1.53 ha/h",
        "6.2, POUND_PER_CUBIC_FOOT, 6.2 lb/ft\u00b3, 99.3 kg/m\u00b3", "31416, POUND_FORCE, |31,400 lbf|, 140 kN",
        "80, FOOT_POUND_FORCE, 80 ft-lbf, 108 N m", "18000, US_DOLLAR, |$18,000|, |$18,000|",
        "377.42, US_DOLLAR, $377.42, $377.42", "22645.2, US_DOLLAR, |$22,645|, |$22,645|", "3, PIECE, 3, 3",
        "-10, INCH, -10 in, -25.4 cm", "158, SHORT_TON_PER_HOUR, 158 ton/h, 143 t/h"
    })
    void showsInTheTradesUnits(double value, UnitOfMeasure unit, String us, String metric) {
        assertEquals(us, US.show(unit.of(value)).replace('\u00a0', ' '));
        assertEquals(metric, METRIC.show(unit.of(value)).replace('\u00a0', ' '));
    }

    @Test
    void showsRangesInOneUnit() {
        Spread<Amount> hours = Spread.of(UnitOfMeasure.MINUTE.of(80), UnitOfMeasure.HOUR.of(2.5));
        assertEquals("1.33\u20132.5\u00a0h", US.show(hours));
        Spread<Amount> price = Spread.of(UnitOfMeasure.US_DOLLAR.of(540), UnitOfMeasure.US_DOLLAR.of(900));
        assertEquals("$540 \u2013 $900", US.show(price).replace('\u202f', ' ').replace('\u2009', ' '));
        Spread<Amount> same = Spread.of(UnitOfMeasure.POUND.of(1000.1), UnitOfMeasure.POUND.of(1000.2));
        assertEquals("1,000\u00a0lb", US.show(same));
    }

    /** Feet and inches as on a tape measure; common practice, no source. */
    @ParameterizedTest(name = "{0} in is shown as [{1}]")
    @CsvSource({
        "116, 9 ft 8 in, 9 pies 8 pulg", "100, 8 ft 4 in, 8 pies 4 pulg", "120, 10 ft, 10 pies",
        "119.9, 10 ft, 10 pies", "143.6, 11 ft 11.5 in, 11 pies 11.5 pulg", "99, 99 in, 99 pulg",
        "359, 29 ft 11 in, 29 pies 11 pulg", "400, 33.3 ft, 33.3 pies"
    })
    void showsFeetWithInches(double inches, String english, String spanish) {
        Quantities inSpanish = new Quantities(Locale.forLanguageTag("es-US"), false);
        assertEquals(english, US.show(UnitOfMeasure.INCH.of(inches)).replace('\u00a0', ' '));
        assertEquals(spanish, inSpanish.show(UnitOfMeasure.INCH.of(inches)).replace('\u00a0', ' '));
    }

    @Test
    void showsARangeOfFeetWithInches() {
        Spread<Amount> height = Spread.of(UnitOfMeasure.INCH.of(90), UnitOfMeasure.INCH.of(116));
        assertEquals("7 ft 6 in \u2013 9 ft 8 in", US.show(height).replace('\u00a0', ' '));
        assertEquals(height.high().si(), US.parseRange(US.show(height), Dimension.LENGTH).high().si(), 1e-9);
    }

    @Test
    void showsTheLocalesSeparatorsAndWords() {
        assertEquals("2,29\u00a0m\u00b3", SPANISH.show(UnitOfMeasure.CUBIC_YARD.of(3)));
        assertEquals("5 a\u00f1os", SPANISH.show(UnitOfMeasure.YEAR.of(5)).replace('\u00a0', ' '));
        Quantities inches = new Quantities(Locale.forLanguageTag("es-US"), false);
        assertEquals("84.5\u00a0pulg", inches.show(UnitOfMeasure.INCH.of(84.5)));
    }

    @Test
    void showsInTheUnitAskedFor() {
        assertEquals("8\u00a0ft\u00b3", US.show(UnitOfMeasure.CUBIC_FOOT.of(8), UnitOfMeasure.CUBIC_FOOT));
    }

    /** What is shown can be read again and is the same to three digits, half inches above two. */
    @ParameterizedTest
    @EnumSource(UnitOfMeasure.class)
    void whatIsShownCanBeReadAgain(UnitOfMeasure unit) {
        Random random = new Random(33);
        for (int i = 0; i < 40; i++) {
            double value = 1 + random.nextInt(900) / 10.0;
            Amount amount = unit.of(value);
            for (Quantities quantities : new Quantities[] {US, METRIC}) {
                String shown = quantities.show(amount);
                Amount back = quantities.parse(shown, unit.dimension());
                double slack = switch (unit.dimension()) {
                    case COUNT -> 0.5;
                    case TEMPERATURE -> 0.51;
                    case LENGTH -> 0.0064 + 0.006 * amount.si();
                    default -> 0.006 * amount.si();
                };
                assertEquals(amount.si(), back.si(), slack, () -> "seed 33: " + value + " " + unit + ": " + shown);
            }
        }
    }

    /** Random text never hangs and never fails in another way than by a clear refusal. */
    @Test
    void randomTextIsReadOrRefused() {
        String letters = "0123456789.,/-+ '\"ftinlbgalmphkUSD$%\u00bd\u00b0eE\u2212";
        List<Dimension> dimensions = List.of(Dimension.values());
        Random random = new Random(99);
        for (int i = 0; i < 5_000; i++) {
            StringBuilder text = new StringBuilder();
            int length = random.nextInt(70);
            for (int j = 0; j < length; j++) {
                text.append(letters.charAt(random.nextInt(letters.length())));
            }
            Dimension dimension = dimensions.get(random.nextInt(dimensions.size()));
            assertDoesNotThrow(() -> readOrRefuse(text.toString(), dimension), () -> "seed 99: [" + text + "]");
        }
    }

    private static void readOrRefuse(String text, Dimension dimension) {
        try {
            assertTrue(Double.isFinite(US.parseRange(text, dimension).low().si()));
        } catch (IllegalArgumentException refused) {
            assertTrue(refused.getMessage().length() > 10, refused.getMessage());
        }
    }
}
