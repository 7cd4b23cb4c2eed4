package fencerow.terms;

/**
 * A volume in a time, kept in cubic meters per second.
 *
 * @param si cubic meters per second; finite
 */
public record Flow(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Flow {
        Finite.require(Dimension.FLOW, si);
    }

    /** From an amount that measures a flow. */
    public static Flow of(Amount amount) {
        return new Flow(Finite.of(Dimension.FLOW, amount));
    }

    /** Cubic meters per second. */
    public static Flow ofCubicMetersPerSecond(double value) {
        return new Flow(UnitOfMeasure.CUBIC_METER_PER_SECOND.toSi(value));
    }

    /** Liters per minute. */
    public static Flow ofLitersPerMinute(double value) {
        return new Flow(UnitOfMeasure.LITER_PER_MINUTE.toSi(value));
    }

    /** US gallons per minute. */
    public static Flow ofGpm(double value) {
        return new Flow(UnitOfMeasure.US_GALLON_PER_MINUTE.toSi(value));
    }

    /** US gallons per hour. */
    public static Flow ofGallonsPerHour(double value) {
        return new Flow(UnitOfMeasure.US_GALLON_PER_HOUR.toSi(value));
    }

    /** Cubic meters per second. */
    public double toCubicMetersPerSecond() {
        return UnitOfMeasure.CUBIC_METER_PER_SECOND.fromSi(si);
    }

    /** Liters per minute. */
    public double toLitersPerMinute() {
        return UnitOfMeasure.LITER_PER_MINUTE.fromSi(si);
    }

    /** US gallons per minute. */
    public double toGpm() {
        return UnitOfMeasure.US_GALLON_PER_MINUTE.fromSi(si);
    }

    /** US gallons per hour. */
    public double toGallonsPerHour() {
        return UnitOfMeasure.US_GALLON_PER_HOUR.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.FLOW;
    }
}
