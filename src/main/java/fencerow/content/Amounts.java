package fencerow.content;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;

/** Reads a number with its unit. Factors: NIST Handbook 44, appendix C; NIST SP 811, appendix B. */
final class Amounts {
    private static final Pattern SPELLING = Pattern.compile("([-+]?\\d{1,9}(?:\\.\\d{1,9})?) ?([A-Za-z/0-9$]+)?");

    private record Unit(Dimension dimension, double inSi) {}

    private static final Map<String, Unit> UNITS = Map.ofEntries(
            Map.entry("in", new Unit(Dimension.LENGTH, 0.0254)),
            Map.entry("ft", new Unit(Dimension.LENGTH, 0.3048)),
            Map.entry("mm", new Unit(Dimension.LENGTH, 0.001)),
            Map.entry("cm", new Unit(Dimension.LENGTH, 0.01)),
            Map.entry("m", new Unit(Dimension.LENGTH, 1)),
            Map.entry("lb", new Unit(Dimension.MASS, 0.45359237)),
            Map.entry("kg", new Unit(Dimension.MASS, 1)),
            Map.entry("hp", new Unit(Dimension.POWER, 745.6998715822702)),
            Map.entry("kW", new Unit(Dimension.POWER, 1000)),
            Map.entry("gpm", new Unit(Dimension.FLOW, 0.003785411784 / 60)),
            Map.entry("L/min", new Unit(Dimension.FLOW, 0.001 / 60)),
            Map.entry("ac", new Unit(Dimension.AREA, 4046.8564224)),
            Map.entry("ha", new Unit(Dimension.AREA, 10_000)),
            Map.entry("psi", new Unit(Dimension.PRESSURE, 6894.757293168361)),
            Map.entry("bar", new Unit(Dimension.PRESSURE, 100_000)),
            Map.entry("h", new Unit(Dimension.TIME, 3600)),
            Map.entry("min", new Unit(Dimension.TIME, 60)),
            Map.entry("s", new Unit(Dimension.TIME, 1)),
            Map.entry("mph", new Unit(Dimension.SPEED, 0.44704)),
            Map.entry("gal", new Unit(Dimension.VOLUME, 0.003785411784)),
            Map.entry("USD", new Unit(Dimension.MONEY, 1)));

    private Amounts() {}

    /**
     * Reads an amount of a dimension.
     *
     * @throws IllegalArgumentException if it is none, saying why and what could be written
     */
    static Amount parse(String text, Dimension dimension) {
        Matcher matcher = SPELLING.matcher(text);
        if (!matcher.matches()) {
            throw new IllegalArgumentException("[" + text + "] is no number with a unit; write " + example(dimension));
        }
        double number = Double.parseDouble(matcher.group(1));
        Optional<String> symbol = Optional.ofNullable(matcher.group(2));
        if (dimension == Dimension.COUNT) {
            if (symbol.isPresent() || number != Math.rint(number)) {
                throw new IllegalArgumentException("[" + text + "] is no count; write a whole number without a unit");
            }
            return new Amount(dimension, number);
        }
        Optional<Unit> unit = symbol.map(UNITS::get);
        if (unit.isEmpty()) {
            throw new IllegalArgumentException("[" + text + "] has no unit that is known; write " + example(dimension));
        }
        if (unit.get().dimension() != dimension) {
            throw new IllegalArgumentException(
                    "[" + text + "] does not measure " + dimension.name() + "; write " + example(dimension));
        }
        return new Amount(dimension, number * unit.get().inSi());
    }

    private static String example(Dimension dimension) {
        if (dimension == Dimension.COUNT) {
            return "a whole number without a unit";
        }
        List<String> fitting = UNITS.entrySet().stream()
                .filter(entry -> entry.getValue().dimension() == dimension)
                .map(Map.Entry::getKey)
                .sorted()
                .toList();
        return fitting.stream().map(unit -> "12 " + unit).collect(Collectors.joining(" or "));
    }
}
