package fencerow.terms;

/**
 * The units in which the trade states quantities, each with its exact size in the SI unit of its dimension. The one
 * place where a conversion factor stands.
 *
 * <p>Factors: international yard and pound (1959), US liquid gallon of 231 cubic inches, mechanical horsepower of
 * 550 ft-lbf/s, standard gravity 9.80665 m/s2 (NIST Special Publication 811, appendix B).
 */
public enum UnitOfMeasure {
    PIECE(Dimension.COUNT, 1),

    METER(Dimension.LENGTH, 1),
    MILLIMETER(Dimension.LENGTH, 1e-3),
    CENTIMETER(Dimension.LENGTH, 1e-2),
    INCH(Dimension.LENGTH, Exact.INCH),
    FOOT(Dimension.LENGTH, Exact.FOOT),
    MILE(Dimension.LENGTH, 5280 * Exact.FOOT),

    KILOGRAM(Dimension.MASS, 1),
    GRAM(Dimension.MASS, 1e-3),
    TONNE(Dimension.MASS, 1000),
    POUND(Dimension.MASS, Exact.POUND),
    SHORT_TON(Dimension.MASS, 2000 * Exact.POUND),

    SQUARE_METER(Dimension.AREA, 1),
    HECTARE(Dimension.AREA, 1e4),
    SQUARE_FOOT(Dimension.AREA, Exact.FOOT * Exact.FOOT),
    /** Of 43,560 international square feet. */
    ACRE(Dimension.AREA, Exact.ACRE),

    CUBIC_METER(Dimension.VOLUME, 1),
    LITER(Dimension.VOLUME, 1e-3),
    US_GALLON(Dimension.VOLUME, Exact.GALLON),
    CUBIC_FOOT(Dimension.VOLUME, Exact.CUBIC_FOOT),
    CUBIC_YARD(Dimension.VOLUME, 27 * Exact.CUBIC_FOOT),

    WATT(Dimension.POWER, 1),
    KILOWATT(Dimension.POWER, 1000),
    /** Mechanical, 550 ft-lbf/s. */
    HORSEPOWER(Dimension.POWER, 550 * Exact.FOOT * Exact.POUND_FORCE),

    CUBIC_METER_PER_SECOND(Dimension.FLOW, 1),
    LITER_PER_MINUTE(Dimension.FLOW, 1e-3 / 60),
    US_GALLON_PER_MINUTE(Dimension.FLOW, Exact.GALLON / 60),
    LITER_PER_HOUR(Dimension.FLOW, 1e-3 / 3600),
    US_GALLON_PER_HOUR(Dimension.FLOW, Exact.GALLON / 3600),

    METER_PER_SECOND(Dimension.SPEED, 1),
    KILOMETER_PER_HOUR(Dimension.SPEED, 1 / 3.6),
    MILE_PER_HOUR(Dimension.SPEED, 5280 * Exact.FOOT / 3600),
    FOOT_PER_SECOND(Dimension.SPEED, Exact.FOOT),
    FOOT_PER_MINUTE(Dimension.SPEED, Exact.FOOT / 60),
    INCH_PER_SECOND(Dimension.SPEED, Exact.INCH),

    NEWTON(Dimension.FORCE, 1),
    KILONEWTON(Dimension.FORCE, 1000),
    POUND_FORCE(Dimension.FORCE, Exact.POUND_FORCE),

    PASCAL(Dimension.PRESSURE, 1),
    BAR(Dimension.PRESSURE, 1e5),
    MEGAPASCAL(Dimension.PRESSURE, 1e6),
    POUND_FORCE_PER_SQUARE_INCH(Dimension.PRESSURE, Exact.POUND_FORCE / (Exact.INCH * Exact.INCH)),

    NEWTON_METER(Dimension.TORQUE, 1),
    FOOT_POUND_FORCE(Dimension.TORQUE, Exact.FOOT * Exact.POUND_FORCE),
    INCH_POUND_FORCE(Dimension.TORQUE, Exact.INCH * Exact.POUND_FORCE),

    KILOGRAM_PER_CUBIC_METER(Dimension.DENSITY, 1),
    KILOGRAM_PER_LITER(Dimension.DENSITY, 1000),
    POUND_PER_CUBIC_FOOT(Dimension.DENSITY, Exact.POUND / Exact.CUBIC_FOOT),
    POUND_PER_CUBIC_YARD(Dimension.DENSITY, Exact.POUND / (27 * Exact.CUBIC_FOOT)),
    POUND_PER_US_GALLON(Dimension.DENSITY, Exact.POUND / Exact.GALLON),

    KELVIN(Dimension.TEMPERATURE, 1),
    CELSIUS(Dimension.TEMPERATURE, 1, 273.15),
    FAHRENHEIT(Dimension.TEMPERATURE, 5 / 9.0, 459.67),

    SECOND(Dimension.TIME, 1),
    MINUTE(Dimension.TIME, 60),
    HOUR(Dimension.TIME, 3600),
    DAY(Dimension.TIME, 86_400),
    /** A twelfth of a year. */
    MONTH(Dimension.TIME, 2_629_746),
    /** The mean Gregorian year of 365.2425 days. */
    YEAR(Dimension.TIME, 31_556_952),

    RADIAN(Dimension.ANGLE, 1),
    DEGREE(Dimension.ANGLE, Math.PI / 180),

    ONE(Dimension.RATIO, 1),
    PERCENT(Dimension.RATIO, 1e-2),

    SQUARE_METER_PER_SECOND(Dimension.WORK_RATE, 1),
    HECTARE_PER_HOUR(Dimension.WORK_RATE, 1e4 / 3600),
    ACRE_PER_HOUR(Dimension.WORK_RATE, Exact.ACRE / 3600),

    KILOGRAM_PER_SECOND(Dimension.MASS_RATE, 1),
    TONNE_PER_HOUR(Dimension.MASS_RATE, 1000 / 3600.0),
    SHORT_TON_PER_HOUR(Dimension.MASS_RATE, 2000 * Exact.POUND / 3600),

    US_DOLLAR(Dimension.MONEY, 1);

    /** The units that the others are made of. */
    private static final class Exact {
        static final double INCH = 0.0254;
        static final double FOOT = 12 * INCH;
        static final double CUBIC_FOOT = FOOT * FOOT * FOOT;
        static final double ACRE = 43_560 * FOOT * FOOT;
        static final double GALLON = 231 * INCH * INCH * INCH;
        static final double POUND = 0.45359237;
        static final double POUND_FORCE = POUND * 9.80665;
    }

    private final Dimension dimension;
    private final double size;
    private final double zero;

    UnitOfMeasure(Dimension dimension, double size) {
        this(dimension, size, 0);
    }

    UnitOfMeasure(Dimension dimension, double size, double zero) {
        this.dimension = dimension;
        this.size = size;
        this.zero = zero;
    }

    /** What the unit measures. */
    public Dimension dimension() {
        return dimension;
    }

    /** A number of this unit in the SI unit of the dimension. */
    public double toSi(double value) {
        return (value + zero) * size;
    }

    /** A number of the dimension's SI unit in this unit. */
    public double fromSi(double si) {
        return si / size - zero;
    }

    /** The amount that {@code value} of this unit is. */
    public Amount of(double value) {
        return new Amount(dimension, toSi(value));
    }
}
