package fencerow.wording;

import com.ibm.icu.number.LocalizedNumberFormatter;
import com.ibm.icu.number.NumberFormatter;
import com.ibm.icu.number.NumberRangeFormatter;
import com.ibm.icu.number.Precision;
import com.ibm.icu.util.Currency;
import com.ibm.icu.util.MeasureUnit;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Spread;
import fencerow.terms.UnitOfMeasure;
import java.math.BigDecimal;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Amounts as people read and write them: US customary or metric, in the manner of a locale.
 *
 * <p>Shown with at most three significant digits; inches above two to the nearest half, feet below thirty with inches,
 * dollars whole from 1,000 up.
 *
 * @param locale whose separators and words are used
 * @param metric whether amounts are shown in metric units rather than US customary; both are read
 */
public record Quantities(Locale locale, boolean metric) {
    private static final double SLACK = 1e-9;
    private static final double FEET_WITH_INCHES = 30;
    private static final int INCHES_IN_A_FOOT = 12;
    private static final Pattern RANGE = Pattern.compile("(.+?)\\s*(?:\\.\\.|\u2013|\\bto\\b|\\ba\\b)\\s*(.+)");
    private static final Pattern DASHED = Pattern.compile("([\\d.,]+)\\s*-\\s*([\\d.,]+\\s*[^\\d/].*|[\\d.,]+)");
    private static final Pattern ENDS_IN_DIGIT = Pattern.compile(".*\\d");
    private static final Pattern LEADING_NUMBER = Pattern.compile("[-\\d.,/ ]+");
    private static final Map<UnitOfMeasure, MeasureUnit> IN_WORDS = Map.of(
            UnitOfMeasure.YEAR, MeasureUnit.YEAR,
            UnitOfMeasure.MONTH, MeasureUnit.MONTH,
            UnitOfMeasure.SHORT_TON, MeasureUnit.TON);

    /**
     * Reads an amount: {@code 3 ac}, {@code 7 ft 2 in}, {@code 6'8"}, {@code 1-3/8 in}, {@code 5.3 gpm},
     * {@code $18,000}, {@code 2 t} (metric; {@code 2 tons} are short tons), {@code 80 %}. Counts, ratios and dollars
     * need no unit.
     *
     * @throws IllegalArgumentException if it is none, saying what is wrong and which units are allowed
     */
    public Amount parse(String text, Dimension expected) {
        return new QuantityReader(locale, expected, text).read();
    }

    /**
     * Reads a range or a single amount: {@code 3 to 5 mph}, {@code 3-5 mph}, {@code 3..5 mph}.
     *
     * @throws IllegalArgumentException as for {@link #parse}, or if the range is upside down
     */
    public Spread<Amount> parseRange(String text, Dimension expected) {
        String plain = text.strip();
        Matcher range = RANGE.matcher(plain);
        Matcher dashed = DASHED.matcher(plain);
        Matcher found = range.matches() ? range : dashed;
        if (!range.matches() && !dashed.matches()) {
            return Spread.exactly(parse(plain, expected));
        }
        String low = found.group(1).strip();
        String high = found.group(2).strip();
        if (ENDS_IN_DIGIT.matcher(low).matches()) {
            low += LEADING_NUMBER.matcher(high).replaceFirst(" ");
        }
        return Spread.of(parse(low, expected), parse(high, expected));
    }

    /** Shows an amount in the unit that the trade uses for its size. */
    public String show(Amount amount) {
        UnitOfMeasure unit = ShownUnit.of(amount, metric);
        return isWithInches(amount, unit) ? feetAndInches(amount) : show(amount, unit);
    }

    /** Nobody's tape measure has tenths of feet. */
    private static boolean isWithInches(Amount amount, UnitOfMeasure unit) {
        return unit == UnitOfMeasure.FOOT && amount.si() >= 0 && amount.si() < unit.toSi(FEET_WITH_INCHES);
    }

    private String feetAndInches(Amount amount) {
        double inches = Math.rint(2 * UnitOfMeasure.INCH.fromSi(amount.si()) + SLACK) / 2;
        double feet = Math.floor(inches / INCHES_IN_A_FOOT);
        double rest = inches - feet * INCHES_IN_A_FOOT;
        String whole = show(UnitOfMeasure.FOOT.of(feet), UnitOfMeasure.FOOT);
        return rest == 0 ? whole : whole + "\u00a0" + show(UnitOfMeasure.INCH.of(rest), UnitOfMeasure.INCH);
    }

    /** Shows an amount in a unit of its dimension. */
    public String show(Amount amount, UnitOfMeasure unit) {
        BigDecimal shown = rounded(unit, amount.si());
        return withUnit(formatter(unit, shown).format(shown).toString(), unit);
    }

    /** Shows a range, both ends in one unit; a single amount where they are the same or look the same. */
    public String show(Spread<Amount> range) {
        UnitOfMeasure unit = ShownUnit.of(range.high(), metric);
        BigDecimal low = rounded(unit, range.low().si());
        BigDecimal high = rounded(unit, range.high().si());
        if (low.compareTo(high) == 0) {
            return show(range.high());
        }
        if (isWithInches(range.low(), unit) && isWithInches(range.high(), unit)) {
            return feetAndInches(range.low()) + " \u2013 " + feetAndInches(range.high());
        }
        String text = NumberRangeFormatter.withLocale(locale)
                .numberFormatterBoth(formatter(unit, high).withoutLocale())
                .formatRange(low, high)
                .toString();
        return withUnit(text, unit);
    }

    private static BigDecimal rounded(UnitOfMeasure unit, double si) {
        double value = TradeUnits.fromSi(unit, si);
        boolean halves = unit == UnitOfMeasure.INCH && Math.abs(value) >= 2;
        return ShownUnit.round(halves ? Math.rint(2 * value + SLACK) / 2 : value, unit);
    }

    private LocalizedNumberFormatter formatter(UnitOfMeasure unit, BigDecimal shown) {
        LocalizedNumberFormatter plain = NumberFormatter.withLocale(locale).precision(Precision.unlimited());
        if (unit == UnitOfMeasure.US_DOLLAR) {
            boolean cents = shown.stripTrailingZeros().scale() > 0;
            return plain.unit(Currency.getInstance("USD")).precision(Precision.fixedFraction(cents ? 2 : 0));
        }
        if (unit == UnitOfMeasure.PERCENT) {
            return plain.unit(MeasureUnit.PERCENT);
        }
        MeasureUnit words = IN_WORDS.get(unit);
        return words == null ? plain : plain.unit(words).unitWidth(NumberFormatter.UnitWidth.FULL_NAME);
    }

    private String withUnit(String number, UnitOfMeasure unit) {
        boolean done = unit == UnitOfMeasure.US_DOLLAR || unit == UnitOfMeasure.PERCENT || IN_WORDS.containsKey(unit);
        String symbol = UnitSpelling.symbol(unit, locale);
        if (done || symbol.isEmpty()) {
            return number;
        }
        return unit == UnitOfMeasure.DEGREE ? number + symbol : number + "\u00a0" + symbol;
    }
}
