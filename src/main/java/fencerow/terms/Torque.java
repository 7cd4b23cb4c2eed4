package fencerow.terms;

/**
 * A turning moment, kept in newton meters.
 *
 * @param si newton meters; finite
 */
public record Torque(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Torque {
        Finite.require(Dimension.TORQUE, si);
    }

    /** From an amount that measures a torque. */
    public static Torque of(Amount amount) {
        return new Torque(Finite.of(Dimension.TORQUE, amount));
    }

    /** Newton meters. */
    public static Torque ofNewtonMeters(double value) {
        return new Torque(UnitOfMeasure.NEWTON_METER.toSi(value));
    }

    /** Foot-pounds (ft-lbf). */
    public static Torque ofFootPounds(double value) {
        return new Torque(UnitOfMeasure.FOOT_POUND_FORCE.toSi(value));
    }

    /** Inch-pounds (in-lbf). */
    public static Torque ofInchPounds(double value) {
        return new Torque(UnitOfMeasure.INCH_POUND_FORCE.toSi(value));
    }

    /** Newton meters. */
    public double toNewtonMeters() {
        return UnitOfMeasure.NEWTON_METER.fromSi(si);
    }

    /** Foot-pounds (ft-lbf). */
    public double toFootPounds() {
        return UnitOfMeasure.FOOT_POUND_FORCE.fromSi(si);
    }

    /** Inch-pounds (in-lbf). */
    public double toInchPounds() {
        return UnitOfMeasure.INCH_POUND_FORCE.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.TORQUE;
    }
}
