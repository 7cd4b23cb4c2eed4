package fencerow.wording;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.UnitOfMeasure;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Which unit the trade uses for an amount of a size, and how far it is rounded. */
final class ShownUnit {
    private static final MathContext THREE_DIGITS = new MathContext(3, RoundingMode.HALF_EVEN);
    private static final double WHOLE_DOLLARS = 1000;

    private ShownUnit() {}

    static UnitOfMeasure of(Amount amount, boolean metric) {
        double size = Math.abs(amount.si());
        return switch (amount.dimension()) {
            case COUNT -> UnitOfMeasure.PIECE;
            case RATIO -> UnitOfMeasure.PERCENT;
            case MONEY -> UnitOfMeasure.US_DOLLAR;
            case ANGLE -> UnitOfMeasure.DEGREE;
            case TIME -> time(size);
            case LENGTH -> metric ? metricLength(size) : length(size);
            default -> metric ? metricUnit(amount.dimension(), size) : usUnit(amount.dimension(), size);
        };
    }

    /** Three significant digits; whole numbers, dollars and degrees as they are written. */
    static BigDecimal round(double value, UnitOfMeasure unit) {
        BigDecimal exact = BigDecimal.valueOf(value);
        if (unit.dimension() == Dimension.COUNT || unit.dimension() == Dimension.TEMPERATURE) {
            return exact.setScale(0, RoundingMode.HALF_EVEN);
        }
        if (unit == UnitOfMeasure.US_DOLLAR) {
            return exact.setScale(Math.abs(value) < WHOLE_DOLLARS ? 2 : 0, RoundingMode.HALF_EVEN);
        }
        BigDecimal rounded = exact.round(THREE_DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }

    /** Whole months are an age; anything else is work. */
    private static UnitOfMeasure time(double size) {
        double months = UnitOfMeasure.MONTH.fromSi(size);
        if (months >= 1 && Math.abs(months - Math.rint(months)) < 1e-6) {
            return months >= 24 || Math.rint(months) % 12 == 0 ? UnitOfMeasure.YEAR : UnitOfMeasure.MONTH;
        }
        if (size < UnitOfMeasure.MINUTE.toSi(2)) {
            return UnitOfMeasure.SECOND;
        }
        return size < UnitOfMeasure.MINUTE.toSi(90) ? UnitOfMeasure.MINUTE : UnitOfMeasure.HOUR;
    }

    private static UnitOfMeasure length(double size) {
        return size < UnitOfMeasure.INCH.toSi(100) ? UnitOfMeasure.INCH : UnitOfMeasure.FOOT;
    }

    private static UnitOfMeasure metricLength(double size) {
        if (size < 0.1) {
            return UnitOfMeasure.MILLIMETER;
        }
        return size < 1 ? UnitOfMeasure.CENTIMETER : UnitOfMeasure.METER;
    }

    private static UnitOfMeasure usUnit(Dimension dimension, double size) {
        return switch (dimension) {
            case MASS -> size < UnitOfMeasure.POUND.toSi(20_000) ? UnitOfMeasure.POUND : UnitOfMeasure.SHORT_TON;
            case AREA -> size < UnitOfMeasure.ACRE.toSi(0.25) ? UnitOfMeasure.SQUARE_FOOT : UnitOfMeasure.ACRE;
            case VOLUME -> size < 0.5 ? UnitOfMeasure.US_GALLON : UnitOfMeasure.CUBIC_YARD;
            case POWER -> UnitOfMeasure.HORSEPOWER;
            case FLOW -> size < UnitOfMeasure.US_GALLON_PER_MINUTE.toSi(0.2)
                    ? UnitOfMeasure.US_GALLON_PER_HOUR
                    : UnitOfMeasure.US_GALLON_PER_MINUTE;
            case SPEED -> size < 0.2 ? UnitOfMeasure.INCH_PER_SECOND : UnitOfMeasure.MILE_PER_HOUR;
            case FORCE -> UnitOfMeasure.POUND_FORCE;
            case PRESSURE -> UnitOfMeasure.POUND_FORCE_PER_SQUARE_INCH;
            case TORQUE -> UnitOfMeasure.FOOT_POUND_FORCE;
            case DENSITY -> UnitOfMeasure.POUND_PER_CUBIC_FOOT;
            case TEMPERATURE -> UnitOfMeasure.FAHRENHEIT;
            case WORK_RATE -> UnitOfMeasure.ACRE_PER_HOUR;
            case MASS_RATE -> UnitOfMeasure.SHORT_TON_PER_HOUR;
            default -> throw new IllegalArgumentException("no US unit for " + dimension.id());
        };
    }

    private static UnitOfMeasure metricUnit(Dimension dimension, double size) {
        return switch (dimension) {
            case MASS -> size < 10_000 ? UnitOfMeasure.KILOGRAM : UnitOfMeasure.TONNE;
            case AREA -> size < 1000 ? UnitOfMeasure.SQUARE_METER : UnitOfMeasure.HECTARE;
            case VOLUME -> size < 0.5 ? UnitOfMeasure.LITER : UnitOfMeasure.CUBIC_METER;
            case POWER -> UnitOfMeasure.KILOWATT;
            case FLOW -> size < UnitOfMeasure.LITER_PER_MINUTE.toSi(1)
                    ? UnitOfMeasure.LITER_PER_HOUR
                    : UnitOfMeasure.LITER_PER_MINUTE;
            case SPEED -> size < 0.2 ? UnitOfMeasure.METER_PER_SECOND : UnitOfMeasure.KILOMETER_PER_HOUR;
            case FORCE -> size < 10_000 ? UnitOfMeasure.NEWTON : UnitOfMeasure.KILONEWTON;
            case PRESSURE -> UnitOfMeasure.BAR;
            case TORQUE -> UnitOfMeasure.NEWTON_METER;
            case DENSITY -> UnitOfMeasure.KILOGRAM_PER_CUBIC_METER;
            case TEMPERATURE -> UnitOfMeasure.CELSIUS;
            case WORK_RATE -> UnitOfMeasure.HECTARE_PER_HOUR;
            case MASS_RATE -> UnitOfMeasure.TONNE_PER_HOUR;
            default -> throw new IllegalArgumentException("no metric unit for " + dimension.id());
        };
    }
}
