package fencerow.terms;

/**
 * An angle, kept in radians.
 *
 * @param si radians; finite
 */
public record Angle(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Angle {
        Finite.require(Dimension.ANGLE, si);
    }

    /** From an amount that measures an angle. */
    public static Angle of(Amount amount) {
        return new Angle(Finite.of(Dimension.ANGLE, amount));
    }

    /** Radians. */
    public static Angle ofRadians(double value) {
        return new Angle(UnitOfMeasure.RADIAN.toSi(value));
    }

    /** Degrees. */
    public static Angle ofDegrees(double value) {
        return new Angle(UnitOfMeasure.DEGREE.toSi(value));
    }

    /** Radians. */
    public double toRadians() {
        return UnitOfMeasure.RADIAN.fromSi(si);
    }

    /** Degrees. */
    public double toDegrees() {
        return UnitOfMeasure.DEGREE.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.ANGLE;
    }
}
