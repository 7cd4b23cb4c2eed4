package fencerow.terms;

/**
 * A speed, kept in meters per second.
 *
 * @param si meters per second; finite
 */
public record Speed(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Speed {
        Finite.require(Dimension.SPEED, si);
    }

    /** From an amount that measures a speed. */
    public static Speed of(Amount amount) {
        return new Speed(Finite.of(Dimension.SPEED, amount));
    }

    /** Meters per second. */
    public static Speed ofMetersPerSecond(double value) {
        return new Speed(UnitOfMeasure.METER_PER_SECOND.toSi(value));
    }

    /** Miles per hour. */
    public static Speed ofMph(double value) {
        return new Speed(UnitOfMeasure.MILE_PER_HOUR.toSi(value));
    }

    /** Kilometers per hour. */
    public static Speed ofKilometersPerHour(double value) {
        return new Speed(UnitOfMeasure.KILOMETER_PER_HOUR.toSi(value));
    }

    /** Feet per second. */
    public static Speed ofFeetPerSecond(double value) {
        return new Speed(UnitOfMeasure.FOOT_PER_SECOND.toSi(value));
    }

    /** Meters per second. */
    public double toMetersPerSecond() {
        return UnitOfMeasure.METER_PER_SECOND.fromSi(si);
    }

    /** Miles per hour. */
    public double toMph() {
        return UnitOfMeasure.MILE_PER_HOUR.fromSi(si);
    }

    /** Kilometers per hour. */
    public double toKilometersPerHour() {
        return UnitOfMeasure.KILOMETER_PER_HOUR.fromSi(si);
    }

    /** Feet per second. */
    public double toFeetPerSecond() {
        return UnitOfMeasure.FOOT_PER_SECOND.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.SPEED;
    }
}
