package fencerow.terms;

/**
 * An area worked in a time, kept in square meters per second.
 *
 * @param si square meters per second; finite
 */
public record WorkRate(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public WorkRate {
        Finite.require(Dimension.WORK_RATE, si);
    }

    /** From an amount that measures a work rate. */
    public static WorkRate of(Amount amount) {
        return new WorkRate(Finite.of(Dimension.WORK_RATE, amount));
    }

    /** Square meters per second. */
    public static WorkRate ofSquareMetersPerSecond(double value) {
        return new WorkRate(UnitOfMeasure.SQUARE_METER_PER_SECOND.toSi(value));
    }

    /** Acres per hour. */
    public static WorkRate ofAcresPerHour(double value) {
        return new WorkRate(UnitOfMeasure.ACRE_PER_HOUR.toSi(value));
    }

    /** Hectares per hour. */
    public static WorkRate ofHectaresPerHour(double value) {
        return new WorkRate(UnitOfMeasure.HECTARE_PER_HOUR.toSi(value));
    }

    /** Square meters per second. */
    public double toSquareMetersPerSecond() {
        return UnitOfMeasure.SQUARE_METER_PER_SECOND.fromSi(si);
    }

    /** Acres per hour. */
    public double toAcresPerHour() {
        return UnitOfMeasure.ACRE_PER_HOUR.fromSi(si);
    }

    /** Hectares per hour. */
    public double toHectaresPerHour() {
        return UnitOfMeasure.HECTARE_PER_HOUR.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.WORK_RATE;
    }
}
