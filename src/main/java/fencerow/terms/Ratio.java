package fencerow.terms;

/**
 * A share of a whole, kept as a fraction: an efficiency, a rate of interest.
 *
 * @param si the fraction; finite
 */
public record Ratio(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Ratio {
        Finite.require(Dimension.RATIO, si);
    }

    /** From an amount that measures a ratio. */
    public static Ratio of(Amount amount) {
        return new Ratio(Finite.of(Dimension.RATIO, amount));
    }

    /** A fraction, 1 for all. */
    public static Ratio ofFraction(double value) {
        return new Ratio(UnitOfMeasure.ONE.toSi(value));
    }

    /** Percent. */
    public static Ratio ofPercent(double value) {
        return new Ratio(UnitOfMeasure.PERCENT.toSi(value));
    }

    /** A fraction, 1 for all. */
    public double toFraction() {
        return UnitOfMeasure.ONE.fromSi(si);
    }

    /** Percent. */
    public double toPercent() {
        return UnitOfMeasure.PERCENT.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.RATIO;
    }
}
