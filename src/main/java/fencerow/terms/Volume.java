package fencerow.terms;

/**
 * A volume, kept in cubic meters.
 *
 * @param si cubic meters; finite
 */
public record Volume(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Volume {
        Finite.require(Dimension.VOLUME, si);
    }

    /** From an amount that measures a volume. */
    public static Volume of(Amount amount) {
        return new Volume(Finite.of(Dimension.VOLUME, amount));
    }

    /** Cubic meters. */
    public static Volume ofCubicMeters(double value) {
        return new Volume(UnitOfMeasure.CUBIC_METER.toSi(value));
    }

    /** Liters. */
    public static Volume ofLiters(double value) {
        return new Volume(UnitOfMeasure.LITER.toSi(value));
    }

    /** US liquid gallons of 231 cubic inches. */
    public static Volume ofUsGallons(double value) {
        return new Volume(UnitOfMeasure.US_GALLON.toSi(value));
    }

    /** Cubic feet. */
    public static Volume ofCubicFeet(double value) {
        return new Volume(UnitOfMeasure.CUBIC_FOOT.toSi(value));
    }

    /** Cubic yards. */
    public static Volume ofCubicYards(double value) {
        return new Volume(UnitOfMeasure.CUBIC_YARD.toSi(value));
    }

    /** Cubic meters. */
    public double toCubicMeters() {
        return UnitOfMeasure.CUBIC_METER.fromSi(si);
    }

    /** Liters. */
    public double toLiters() {
        return UnitOfMeasure.LITER.fromSi(si);
    }

    /** US liquid gallons of 231 cubic inches. */
    public double toUsGallons() {
        return UnitOfMeasure.US_GALLON.fromSi(si);
    }

    /** Cubic feet. */
    public double toCubicFeet() {
        return UnitOfMeasure.CUBIC_FOOT.fromSi(si);
    }

    /** Cubic yards. */
    public double toCubicYards() {
        return UnitOfMeasure.CUBIC_YARD.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.VOLUME;
    }
}
