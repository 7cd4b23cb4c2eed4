package fencerow.terms;

/**
 * A range of one quantity, both ends included: what a table states as "from a to b", or what a calculation gives when
 * its inputs are ranges.
 *
 * @param <Q>  the quantity
 * @param low  the smaller end
 * @param high the larger end, at least {@code low}
 */
public record Spread<Q extends Quantity>(Q low, Q high) {
    /** @throws IllegalArgumentException if the ends measure different things or are the wrong way round */
    public Spread {
        if (low.dimension() != high.dimension()) {
            throw new IllegalArgumentException("range from " + low + " to " + high + " mixes two dimensions");
        }
        if (low.si() > high.si()) {
            throw new IllegalArgumentException("range from " + low + " to " + high + " is upside down; swap the ends");
        }
    }

    /** The range from {@code low} to {@code high}. */
    public static <Q extends Quantity> Spread<Q> of(Q low, Q high) {
        return new Spread<>(low, high);
    }

    /** One value, known exactly. */
    public static <Q extends Quantity> Spread<Q> exactly(Q value) {
        return new Spread<>(value, value);
    }

    /** Whether both ends are the same value. */
    public boolean isExact() {
        return low.si() == high.si();
    }

    /** Whether {@code value} lies in the range; its dimension must be that of the ends. */
    public boolean contains(Quantity value) {
        return value.dimension() == low.dimension() && value.si() >= low.si() && value.si() <= high.si();
    }

    /** The same range as amounts. */
    public Spread<Amount> amounts() {
        return new Spread<>(low.amount(), high.amount());
    }
}
