package fencerow.terms;

/**
 * A force, kept in newtons.
 *
 * @param si newtons; finite
 */
public record Force(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Force {
        Finite.require(Dimension.FORCE, si);
    }

    /** From an amount that measures a force. */
    public static Force of(Amount amount) {
        return new Force(Finite.of(Dimension.FORCE, amount));
    }

    /** Newtons. */
    public static Force ofNewtons(double value) {
        return new Force(UnitOfMeasure.NEWTON.toSi(value));
    }

    /** Pounds-force. */
    public static Force ofPoundsForce(double value) {
        return new Force(UnitOfMeasure.POUND_FORCE.toSi(value));
    }

    /** Newtons. */
    public double toNewtons() {
        return UnitOfMeasure.NEWTON.fromSi(si);
    }

    /** Pounds-force. */
    public double toPoundsForce() {
        return UnitOfMeasure.POUND_FORCE.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.FORCE;
    }
}
