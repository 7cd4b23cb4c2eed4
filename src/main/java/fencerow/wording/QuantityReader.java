package fencerow.wording;

import com.ibm.icu.text.DecimalFormat;
import com.ibm.icu.text.NumberFormat;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.UnitOfMeasure;
import java.text.ParsePosition;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads amounts as people write them; see {@link Quantities#parse}. */
final class QuantityReader {
    /** Longer text is no amount; keeps the patterns from working on pages. */
    private static final int LONGEST = 60;

    private static final Pattern FRACTION = Pattern.compile("(?:(\\d{1,6})[ -])?(\\d{1,3})/(\\d{1,3})(.*)");
    private static final Pattern UNIT =
            Pattern.compile("\\s*([^\\d\\s-][^\\d]*(?:(?<=[a-z])[23](?=/|$)[^\\d]*)?)?(.*)");
    private static final Map<String, String> VULGAR =
            Map.of("\u00bc", " 1/4", "\u00bd", " 1/2", "\u00be", " 3/4");

    private final Locale locale;
    private final Dimension expected;
    private final String whole;

    QuantityReader(Locale locale, Dimension expected, String whole) {
        this.locale = locale;
        this.expected = expected;
        this.whole = whole;
    }

    Amount read() {
        String rest = whole.strip().replace('\u00a0', ' ').replace('\u202f', ' ');
        if (rest.isEmpty() || rest.length() > LONGEST) {
            throw wrong(rest.isEmpty() ? "nothing is given" : "[" + rest.substring(0, LONGEST) + "...] is too long");
        }
        for (Map.Entry<String, String> vulgar : VULGAR.entrySet()) {
            rest = rest.replace(vulgar.getKey(), vulgar.getValue()).strip();
        }
        boolean negative = rest.startsWith("-") || rest.startsWith("\u2212");
        rest = negative ? rest.substring(1).strip() : rest;
        if (expected == Dimension.MONEY && rest.startsWith("$")) {
            rest = rest.substring(1).strip() + (rest.contains("USD") ? "" : " USD");
        }
        return new Amount(expected, readParts(rest, negative ? -1 : 1));
    }

    private double readParts(String text, int sign) {
        double sum = 0;
        Optional<UnitOfMeasure> before = Optional.empty();
        String rest = text;
        do {
            Part<Double> number = readNumber(rest);
            boolean inchesMeant = before.equals(Optional.of(UnitOfMeasure.FOOT)) && number.rest().isEmpty();
            Part<UnitOfMeasure> unit =
                    inchesMeant ? new Part<>(UnitOfMeasure.INCH, "") : readUnit(number.rest());
            if (before.isPresent() && !mayFollow(before.get(), unit.what())) {
                throw wrong("[" + whole + "] has more than one part");
            }
            sum += TradeUnits.toSi(unit.what(), sign * number.what());
            before = Optional.of(unit.what());
            rest = unit.rest();
        } while (!rest.isEmpty());
        return sum;
    }

    /** Feet and inches, hours and minutes: only of length and time, the larger first. */
    private boolean mayFollow(UnitOfMeasure before, UnitOfMeasure unit) {
        return (expected == Dimension.LENGTH || expected == Dimension.TIME) && unit.toSi(1) < before.toSi(1);
    }

    /** What was read at the start, and the text after it. */
    private record Part<T>(T what, String rest) {}

    private Part<Double> readNumber(String text) {
        Matcher fraction = FRACTION.matcher(text);
        if (fraction.matches()) {
            double units = fraction.group(1) == null ? 0 : Double.parseDouble(fraction.group(1));
            double below = Double.parseDouble(fraction.group(3));
            if (below == 0) {
                throw wrong("[" + whole + "] divides by zero");
            }
            return new Part<>(units + Double.parseDouble(fraction.group(2)) / below, fraction.group(4));
        }
        DecimalFormat format = (DecimalFormat) NumberFormat.getNumberInstance(locale);
        format.setParseStrict(true);
        ParsePosition position = new ParsePosition(0);
        Number parsed = format.parse(text, position);
        if (parsed == null || text.isEmpty() || !Character.isDigit(text.charAt(0))) {
            throw wrong("[" + whole + "] does not begin with a number such as " + format.format(2.5));
        }
        return new Part<>(parsed.doubleValue(), text.substring(position.getIndex()));
    }

    private Part<UnitOfMeasure> readUnit(String text) {
        Matcher matcher = UNIT.matcher(text);
        String spelling = matcher.matches() && matcher.group(1) != null ? matcher.group(1).strip() : "";
        Optional<UnitOfMeasure> unit = spelling.isEmpty() ? bare() : UnitSpelling.find(spelling, expected);
        if (unit.isPresent()) {
            return new Part<>(unit.get(), matcher.group(2).strip());
        }
        if (spelling.isEmpty()) {
            throw wrong("[" + whole + "] has no unit");
        }
        throw wrong(UnitSpelling.findDimension(spelling)
                .map(other -> "[" + spelling + "] is a unit of " + other.id().replace('-', ' '))
                .orElse("[" + spelling + "] is no unit that is known here"));
    }

    /** The unit that goes without saying, where there is one. */
    private Optional<UnitOfMeasure> bare() {
        return switch (expected) {
            case COUNT -> Optional.of(UnitOfMeasure.PIECE);
            case RATIO -> Optional.of(UnitOfMeasure.ONE);
            case MONEY -> Optional.of(UnitOfMeasure.US_DOLLAR);
            default -> Optional.empty();
        };
    }

    private IllegalArgumentException wrong(String what) {
        String units = UnitSpelling.allowed(expected);
        String kind = expected.id().replace('-', ' ');
        String article = "aeiou".indexOf(kind.charAt(0)) < 0 ? "a " : "an ";
        return new IllegalArgumentException(what + "; give " + article + kind
                + (units.isEmpty() ? " as a plain number" : " in " + units));
    }
}
