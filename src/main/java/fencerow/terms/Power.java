package fencerow.terms;

/**
 * A power, kept in watts.
 *
 * @param si watts; finite
 */
public record Power(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Power {
        Finite.require(Dimension.POWER, si);
    }

    /** From an amount that measures a power. */
    public static Power of(Amount amount) {
        return new Power(Finite.of(Dimension.POWER, amount));
    }

    /** Watts. */
    public static Power ofWatts(double value) {
        return new Power(UnitOfMeasure.WATT.toSi(value));
    }

    /** Kilowatts. */
    public static Power ofKilowatts(double value) {
        return new Power(UnitOfMeasure.KILOWATT.toSi(value));
    }

    /** Mechanical horsepower of 550 ft-lbf/s. */
    public static Power ofHorsepower(double value) {
        return new Power(UnitOfMeasure.HORSEPOWER.toSi(value));
    }

    /** Watts. */
    public double toWatts() {
        return UnitOfMeasure.WATT.fromSi(si);
    }

    /** Kilowatts. */
    public double toKilowatts() {
        return UnitOfMeasure.KILOWATT.fromSi(si);
    }

    /** Mechanical horsepower of 550 ft-lbf/s. */
    public double toHorsepower() {
        return UnitOfMeasure.HORSEPOWER.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.POWER;
    }
}
