package fencerow.sizing;

import fencerow.terms.Quantity;

/**
 * The values for which a calculation is valid, both ends included.
 *
 * @param <Q>  the quantity
 * @param what what the value is, as an id ({@code wheelbase})
 * @param min  the smallest allowed
 * @param max  the largest allowed
 */
public record Bounds<Q extends Quantity>(String what, Q min, Q max) {
    /** Lets 24 in pass where 2 ft is the limit. */
    private static final double SLACK = 1e-9;

    /**
     * Returns the value's number in the SI unit.
     *
     * @throws OutOfRangeException if the value lies outside
     */
    public double check(Q value) {
        double si = value.si();
        double slack = SLACK * Math.max(Math.abs(min.si()), Math.abs(max.si()));
        if (si < min.si() - slack || si > max.si() + slack) {
            throw new OutOfRangeException(what, value.amount(), min.amount(), max.amount());
        }
        return si;
    }

    /** The same limits for another value of the same kind. */
    public Bounds<Q> as(String otherName) {
        return new Bounds<>(otherName, min, max);
    }
}
