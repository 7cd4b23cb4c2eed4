package fencerow.terms;

/**
 * A pressure above that of the air, kept in pascals.
 *
 * @param si pascals; finite
 */
public record Pressure(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Pressure {
        Finite.require(Dimension.PRESSURE, si);
    }

    /** From an amount that measures a pressure. */
    public static Pressure of(Amount amount) {
        return new Pressure(Finite.of(Dimension.PRESSURE, amount));
    }

    /** Pascals. */
    public static Pressure ofPascals(double value) {
        return new Pressure(UnitOfMeasure.PASCAL.toSi(value));
    }

    /** Bar. */
    public static Pressure ofBar(double value) {
        return new Pressure(UnitOfMeasure.BAR.toSi(value));
    }

    /** Pounds-force per square inch. */
    public static Pressure ofPsi(double value) {
        return new Pressure(UnitOfMeasure.POUND_FORCE_PER_SQUARE_INCH.toSi(value));
    }

    /** Pascals. */
    public double toPascals() {
        return UnitOfMeasure.PASCAL.fromSi(si);
    }

    /** Bar. */
    public double toBar() {
        return UnitOfMeasure.BAR.fromSi(si);
    }

    /** Pounds-force per square inch. */
    public double toPsi() {
        return UnitOfMeasure.POUND_FORCE_PER_SQUARE_INCH.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.PRESSURE;
    }
}
