package fencerow.terms;

/**
 * A mass moved in a time, kept in kilograms per second.
 *
 * @param si kilograms per second; finite
 */
public record MassRate(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public MassRate {
        Finite.require(Dimension.MASS_RATE, si);
    }

    /** From an amount that measures a mass rate. */
    public static MassRate of(Amount amount) {
        return new MassRate(Finite.of(Dimension.MASS_RATE, amount));
    }

    /** Kilograms per second. */
    public static MassRate ofKilogramsPerSecond(double value) {
        return new MassRate(UnitOfMeasure.KILOGRAM_PER_SECOND.toSi(value));
    }

    /** Short tons per hour. */
    public static MassRate ofShortTonsPerHour(double value) {
        return new MassRate(UnitOfMeasure.SHORT_TON_PER_HOUR.toSi(value));
    }

    /** Kilograms per second. */
    public double toKilogramsPerSecond() {
        return UnitOfMeasure.KILOGRAM_PER_SECOND.fromSi(si);
    }

    /** Short tons per hour. */
    public double toShortTonsPerHour() {
        return UnitOfMeasure.SHORT_TON_PER_HOUR.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS_RATE;
    }
}
