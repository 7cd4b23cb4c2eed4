package fencerow.wording;

import fencerow.terms.Dimension;
import fencerow.terms.UnitOfMeasure;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** How people write units, in English and Spanish. The first spelling of a unit is the one that is shown. */
final class UnitSpelling {
    private static final Map<UnitOfMeasure, List<String>> SPELLINGS = spellings();

    /** What the trade's Spanish shows where it is not the international symbol; common practice, no source. */
    private static final Map<UnitOfMeasure, String> IN_SPANISH = Map.of(
            UnitOfMeasure.INCH, "pulg",
            UnitOfMeasure.FOOT, "pies",
            UnitOfMeasure.MILE_PER_HOUR, "mi/h",
            UnitOfMeasure.US_GALLON_PER_MINUTE, "gal/min");

    private UnitSpelling() {}

    /** The symbol that is shown. */
    static String symbol(UnitOfMeasure unit, Locale locale) {
        if (locale.getLanguage().equals("es") && IN_SPANISH.containsKey(unit)) {
            return IN_SPANISH.getOrDefault(unit, "");
        }
        return Optional.ofNullable(SPELLINGS.get(unit))
                .orElseThrow(() -> new IllegalArgumentException(unit + " has no spelling; add one"))
                .get(0);
    }

    /** The unit of the dimension that is written so. */
    static Optional<UnitOfMeasure> find(String spelling, Dimension dimension) {
        return SPELLINGS.entrySet().stream()
                .filter(entry -> entry.getKey().dimension() == dimension)
                .filter(entry -> matches(entry.getValue(), spelling))
                .map(Map.Entry::getKey)
                .findFirst();
    }

    /** What something written so measures, whatever was expected. */
    static Optional<Dimension> findDimension(String spelling) {
        return SPELLINGS.entrySet().stream()
                .filter(entry -> matches(entry.getValue(), spelling))
                .map(entry -> entry.getKey().dimension())
                .findFirst();
    }

    /** Symbols of all units of a dimension that may be written, as a list in words. */
    static String allowed(Dimension dimension) {
        List<String> symbols = new ArrayList<>();
        SPELLINGS.forEach((unit, spellings) -> {
            if (unit.dimension() == dimension && !spellings.get(0).isEmpty()) {
                symbols.add(spellings.get(0));
            }
        });
        return String.join(", ", symbols);
    }

    private static boolean matches(List<String> spellings, String spelling) {
        String plain = spelling.toLowerCase(Locale.ROOT);
        return spellings.stream().anyMatch(each -> each.toLowerCase(Locale.ROOT).equals(plain));
    }

    private static Map<UnitOfMeasure, List<String>> spellings() {
        Map<UnitOfMeasure, List<String>> all = new EnumMap<>(UnitOfMeasure.class);
        geometry(all);
        matter(all);
        motion(all);
        return all;
    }

    private static void put(Map<UnitOfMeasure, List<String>> all, UnitOfMeasure unit, String... spellings) {
        all.put(unit, List.of(spellings));
    }

    private static void geometry(Map<UnitOfMeasure, List<String>> all) {
        put(all, UnitOfMeasure.PIECE, "", "x", "pc", "pcs", "pieces", "piezas");
        put(all, UnitOfMeasure.INCH, "in", "in.", "inch", "inches", "\"", "\u2033", "\u201d", "''", "pulg", "pulgada",
                "pulgadas");
        put(all, UnitOfMeasure.FOOT, "ft", "ft.", "foot", "feet", "'", "\u2032", "\u2019", "pie", "pies");
        put(all, UnitOfMeasure.MILE, "mi", "mile", "miles", "milla", "millas");
        put(all, UnitOfMeasure.MILLIMETER, "mm");
        put(all, UnitOfMeasure.CENTIMETER, "cm");
        put(all, UnitOfMeasure.METER, "m", "meter", "meters", "metro", "metros");
        put(all, UnitOfMeasure.ACRE, "ac", "acre", "acres");
        put(all, UnitOfMeasure.SQUARE_FOOT, "ft\u00b2", "ft2", "sq ft", "square feet");
        put(all, UnitOfMeasure.HECTARE, "ha", "hectare", "hectares", "hect\u00e1rea", "hect\u00e1reas");
        put(all, UnitOfMeasure.SQUARE_METER, "m\u00b2", "m2");
        put(all, UnitOfMeasure.US_GALLON, "gal", "gallon", "gallons", "us gal", "gal\u00f3n", "galones");
        put(all, UnitOfMeasure.CUBIC_FOOT, "ft\u00b3", "ft3", "cu ft", "cubic feet");
        put(all, UnitOfMeasure.CUBIC_YARD, "yd\u00b3", "yd3", "cu yd", "yd", "yards", "cubic yards");
        put(all, UnitOfMeasure.LITER, "L", "liter", "liters", "litro", "litros");
        put(all, UnitOfMeasure.CUBIC_METER, "m\u00b3", "m3");
        put(all, UnitOfMeasure.DEGREE, "\u00b0", "deg", "degree", "degrees", "grados");
        put(all, UnitOfMeasure.RADIAN, "rad");
        put(all, UnitOfMeasure.PERCENT, "%", "percent", "pct", "por ciento");
        put(all, UnitOfMeasure.ONE, "");
    }

    private static void matter(Map<UnitOfMeasure, List<String>> all) {
        put(all, UnitOfMeasure.POUND, "lb", "lb.", "lbs", "lbs.", "pound", "pounds", "libra", "libras");
        put(all, UnitOfMeasure.SHORT_TON, "ton", "tons", "short ton", "short tons", "tonelada corta",
                "toneladas cortas");
        put(all, UnitOfMeasure.KILOGRAM, "kg", "kilo", "kilos");
        put(all, UnitOfMeasure.GRAM, "g");
        put(all, UnitOfMeasure.TONNE, "t", "tonne", "tonnes");
        put(all, UnitOfMeasure.POUND_PER_CUBIC_FOOT, "lb/ft\u00b3", "lb/ft3", "pcf");
        put(all, UnitOfMeasure.POUND_PER_CUBIC_YARD, "lb/yd\u00b3", "lb/yd3");
        put(all, UnitOfMeasure.POUND_PER_US_GALLON, "lb/gal", "ppg");
        put(all, UnitOfMeasure.KILOGRAM_PER_CUBIC_METER, "kg/m\u00b3", "kg/m3");
        put(all, UnitOfMeasure.KILOGRAM_PER_LITER, "kg/L");
        put(all, UnitOfMeasure.POUND_FORCE, "lbf", "lb-f");
        put(all, UnitOfMeasure.NEWTON, "N");
        put(all, UnitOfMeasure.KILONEWTON, "kN");
        put(all, UnitOfMeasure.POUND_FORCE_PER_SQUARE_INCH, "psi", "lbf/in2");
        put(all, UnitOfMeasure.BAR, "bar");
        put(all, UnitOfMeasure.MEGAPASCAL, "MPa");
        put(all, UnitOfMeasure.PASCAL, "Pa");
        put(all, UnitOfMeasure.FOOT_POUND_FORCE, "ft-lbf", "ft-lb", "lb-ft", "lbf-ft", "ft lb");
        put(all, UnitOfMeasure.INCH_POUND_FORCE, "in-lbf", "in-lb", "lb-in", "lbf-in", "in lb");
        put(all, UnitOfMeasure.NEWTON_METER, "N m", "Nm", "N-m");
        put(all, UnitOfMeasure.HORSEPOWER, "hp", "horsepower", "caballos");
        put(all, UnitOfMeasure.KILOWATT, "kW");
        put(all, UnitOfMeasure.WATT, "W");
        put(all, UnitOfMeasure.FAHRENHEIT, "\u00b0F", "F", "deg F");
        put(all, UnitOfMeasure.CELSIUS, "\u00b0C", "C", "deg C");
        put(all, UnitOfMeasure.KELVIN, "K");
        put(all, UnitOfMeasure.US_DOLLAR, "USD", "$", "dollars", "d\u00f3lares");
    }

    private static void motion(Map<UnitOfMeasure, List<String>> all) {
        put(all, UnitOfMeasure.SECOND, "s", "sec", "second", "seconds", "segundo", "segundos");
        put(all, UnitOfMeasure.MINUTE, "min", "minute", "minutes", "minuto", "minutos");
        put(all, UnitOfMeasure.HOUR, "h", "hr", "hrs", "hour", "hours", "hora", "horas");
        put(all, UnitOfMeasure.DAY, "d", "day", "days", "d\u00eda", "d\u00edas");
        put(all, UnitOfMeasure.MONTH, "mo", "month", "months", "mes", "meses");
        put(all, UnitOfMeasure.YEAR, "yr", "y", "year", "years", "a\u00f1o", "a\u00f1os");
        put(all, UnitOfMeasure.MILE_PER_HOUR, "mph", "mi/h");
        put(all, UnitOfMeasure.FOOT_PER_SECOND, "ft/s");
        put(all, UnitOfMeasure.FOOT_PER_MINUTE, "ft/min");
        put(all, UnitOfMeasure.INCH_PER_SECOND, "in/s");
        put(all, UnitOfMeasure.KILOMETER_PER_HOUR, "km/h", "kph");
        put(all, UnitOfMeasure.METER_PER_SECOND, "m/s");
        put(all, UnitOfMeasure.US_GALLON_PER_MINUTE, "gpm", "gal/min");
        put(all, UnitOfMeasure.US_GALLON_PER_HOUR, "gal/h", "gph");
        put(all, UnitOfMeasure.LITER_PER_MINUTE, "L/min", "lpm");
        put(all, UnitOfMeasure.LITER_PER_HOUR, "L/h");
        put(all, UnitOfMeasure.CUBIC_METER_PER_SECOND, "m\u00b3/s", "m3/s");
        put(all, UnitOfMeasure.ACRE_PER_HOUR, "ac/h", "acres/h", "acres per hour");
        put(all, UnitOfMeasure.HECTARE_PER_HOUR, "ha/h");
        put(all, UnitOfMeasure.SQUARE_METER_PER_SECOND, "m\u00b2/s", "m2/s");
        put(all, UnitOfMeasure.SHORT_TON_PER_HOUR, "ton/h", "tons/h");
        put(all, UnitOfMeasure.TONNE_PER_HOUR, "t/h");
        put(all, UnitOfMeasure.KILOGRAM_PER_SECOND, "kg/s");
    }
}
