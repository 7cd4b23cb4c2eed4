package fencerow.terms;

/**
 * A mass in a volume, kept in kilograms per cubic meter.
 *
 * @param si kilograms per cubic meter; finite
 */
public record Density(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Density {
        Finite.require(Dimension.DENSITY, si);
    }

    /** From an amount that measures a density. */
    public static Density of(Amount amount) {
        return new Density(Finite.of(Dimension.DENSITY, amount));
    }

    /** Kilograms per cubic meter. */
    public static Density ofKilogramsPerCubicMeter(double value) {
        return new Density(UnitOfMeasure.KILOGRAM_PER_CUBIC_METER.toSi(value));
    }

    /** Pounds per cubic foot. */
    public static Density ofPoundsPerCubicFoot(double value) {
        return new Density(UnitOfMeasure.POUND_PER_CUBIC_FOOT.toSi(value));
    }

    /** Pounds per cubic yard. */
    public static Density ofPoundsPerCubicYard(double value) {
        return new Density(UnitOfMeasure.POUND_PER_CUBIC_YARD.toSi(value));
    }

    /** Pounds per US gallon. */
    public static Density ofPoundsPerGallon(double value) {
        return new Density(UnitOfMeasure.POUND_PER_US_GALLON.toSi(value));
    }

    /** Kilograms per cubic meter. */
    public double toKilogramsPerCubicMeter() {
        return UnitOfMeasure.KILOGRAM_PER_CUBIC_METER.fromSi(si);
    }

    /** Pounds per cubic foot. */
    public double toPoundsPerCubicFoot() {
        return UnitOfMeasure.POUND_PER_CUBIC_FOOT.fromSi(si);
    }

    /** Pounds per cubic yard. */
    public double toPoundsPerCubicYard() {
        return UnitOfMeasure.POUND_PER_CUBIC_YARD.fromSi(si);
    }

    /** Pounds per US gallon. */
    public double toPoundsPerGallon() {
        return UnitOfMeasure.POUND_PER_US_GALLON.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.DENSITY;
    }
}
