package fencerow.terms;

/**
 * A distance, kept in meters.
 *
 * @param si meters; finite
 */
public record Length(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Length {
        Finite.require(Dimension.LENGTH, si);
    }

    /** From an amount that measures a length. */
    public static Length of(Amount amount) {
        return new Length(Finite.of(Dimension.LENGTH, amount));
    }

    /** Meters. */
    public static Length ofMeters(double value) {
        return new Length(UnitOfMeasure.METER.toSi(value));
    }

    /** Millimeters. */
    public static Length ofMillimeters(double value) {
        return new Length(UnitOfMeasure.MILLIMETER.toSi(value));
    }

    /** International feet. */
    public static Length ofFeet(double value) {
        return new Length(UnitOfMeasure.FOOT.toSi(value));
    }

    /** Inches. */
    public static Length ofInches(double value) {
        return new Length(UnitOfMeasure.INCH.toSi(value));
    }

    /** Meters. */
    public double toMeters() {
        return UnitOfMeasure.METER.fromSi(si);
    }

    /** Millimeters. */
    public double toMillimeters() {
        return UnitOfMeasure.MILLIMETER.fromSi(si);
    }

    /** International feet. */
    public double toFeet() {
        return UnitOfMeasure.FOOT.fromSi(si);
    }

    /** Inches. */
    public double toInches() {
        return UnitOfMeasure.INCH.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.LENGTH;
    }
}
