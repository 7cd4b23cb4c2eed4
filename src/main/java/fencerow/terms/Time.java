package fencerow.terms;

/**
 * A length of time, kept in seconds: hours of work, or years of age.
 *
 * @param si seconds; finite
 */
public record Time(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Time {
        Finite.require(Dimension.TIME, si);
    }

    /** From an amount that measures a time. */
    public static Time of(Amount amount) {
        return new Time(Finite.of(Dimension.TIME, amount));
    }

    /** Seconds. */
    public static Time ofSeconds(double value) {
        return new Time(UnitOfMeasure.SECOND.toSi(value));
    }

    /** Minutes. */
    public static Time ofMinutes(double value) {
        return new Time(UnitOfMeasure.MINUTE.toSi(value));
    }

    /** Hours. */
    public static Time ofHours(double value) {
        return new Time(UnitOfMeasure.HOUR.toSi(value));
    }

    /** Mean years of 365.2425 days. */
    public static Time ofYears(double value) {
        return new Time(UnitOfMeasure.YEAR.toSi(value));
    }

    /** Seconds. */
    public double toSeconds() {
        return UnitOfMeasure.SECOND.fromSi(si);
    }

    /** Minutes. */
    public double toMinutes() {
        return UnitOfMeasure.MINUTE.fromSi(si);
    }

    /** Hours. */
    public double toHours() {
        return UnitOfMeasure.HOUR.fromSi(si);
    }

    /** Mean years of 365.2425 days. */
    public double toYears() {
        return UnitOfMeasure.YEAR.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.TIME;
    }
}
