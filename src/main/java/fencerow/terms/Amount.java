package fencerow.terms;

/**
 * A number with what it measures, for places where the dimension is only known from data: figures, answers, demands.
 *
 * @param dimension what is measured
 * @param si        the number in the dimension's SI unit; finite
 */
public record Amount(Dimension dimension, double si) implements Quantity {
    /** @throws IllegalArgumentException if the number is infinite or not a number */
    public Amount {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException("amount [" + si + "] is not a number; give a finite one");
        }
    }

    /** A count of pieces. */
    public static Amount count(long pieces) {
        return new Amount(Dimension.COUNT, pieces);
    }

    /** The amount a whole number of the dimension's steps stands for. */
    public static Amount ofSteps(Dimension dimension, long steps) {
        return new Amount(dimension, steps * dimension.step());
    }

    /** The nearest whole number of the dimension's steps; what matching computes with. */
    public long steps() {
        return Math.round(si / dimension.step());
    }
}
