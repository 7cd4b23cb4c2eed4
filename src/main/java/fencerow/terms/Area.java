package fencerow.terms;

/**
 * An area, kept in square meters.
 *
 * @param si square meters; finite
 */
public record Area(double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Area {
        Finite.require(Dimension.AREA, si);
    }

    /** From an amount that measures an area. */
    public static Area of(Amount amount) {
        return new Area(Finite.of(Dimension.AREA, amount));
    }

    /** Square meters. */
    public static Area ofSquareMeters(double value) {
        return new Area(UnitOfMeasure.SQUARE_METER.toSi(value));
    }

    /** Hectares. */
    public static Area ofHectares(double value) {
        return new Area(UnitOfMeasure.HECTARE.toSi(value));
    }

    /** Acres of 43,560 square feet. */
    public static Area ofAcres(double value) {
        return new Area(UnitOfMeasure.ACRE.toSi(value));
    }

    /** Square feet. */
    public static Area ofSquareFeet(double value) {
        return new Area(UnitOfMeasure.SQUARE_FOOT.toSi(value));
    }

    /** Square meters. */
    public double toSquareMeters() {
        return UnitOfMeasure.SQUARE_METER.fromSi(si);
    }

    /** Hectares. */
    public double toHectares() {
        return UnitOfMeasure.HECTARE.fromSi(si);
    }

    /** Acres of 43,560 square feet. */
    public double toAcres() {
        return UnitOfMeasure.ACRE.fromSi(si);
    }

    /** Square feet. */
    public double toSquareFeet() {
        return UnitOfMeasure.SQUARE_FOOT.fromSi(si);
    }

    @Override
    public Dimension dimension() {
        return Dimension.AREA;
    }
}
