package fencerow.terms;

/**
 * A mass, kept in kilograms; in the trade also a lift capacity.
 *
 * @param si kilograms; finite
 */
public record Mass(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Mass {
        Finite.require(Dimension.MASS, si);
    }

    /** From an amount that measures a mass. */
    public static Mass of(Amount amount) {
        return new Mass(Finite.of(Dimension.MASS, amount));
    }

    /** Kilograms. */
    public static Mass ofKilograms(double value) {
        return new Mass(UnitOfMeasure.KILOGRAM.toSi(value));
    }

    /** Grams. */
    public static Mass ofGrams(double value) {
        return new Mass(UnitOfMeasure.GRAM.toSi(value));
    }

    /** Avoirdupois pounds. */
    public static Mass ofPounds(double value) {
        return new Mass(UnitOfMeasure.POUND.toSi(value));
    }

    /** Short tons of 2,000 lb. */
    public static Mass ofShortTons(double value) {
        return new Mass(UnitOfMeasure.SHORT_TON.toSi(value));
    }

    /** Kilograms. */
    public double toKilograms() {
        return UnitOfMeasure.KILOGRAM.fromSi(si);
    }

    /** Grams. */
    public double toGrams() {
        return UnitOfMeasure.GRAM.fromSi(si);
    }

    /** Avoirdupois pounds. */
    public double toPounds() {
        return UnitOfMeasure.POUND.fromSi(si);
    }

    /** Short tons of 2,000 lb. */
    public double toShortTons() {
        return UnitOfMeasure.SHORT_TON.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.MASS;
    }
}
