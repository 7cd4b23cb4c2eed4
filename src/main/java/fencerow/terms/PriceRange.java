package fencerow.terms;

import java.util.Collection;
import java.util.Optional;

/**
 * A price as the trade states it: from low to high. Plans are made by the middle and shown as the range.
 *
 * @param low  not negative
 * @param high at least {@code low}
 */
public record PriceRange(Money low, Money high) {
    /** Nothing to pay. */
    public static final PriceRange ZERO = new PriceRange(Money.ZERO, Money.ZERO);

    /** @throws IllegalArgumentException if {@code low} is negative or above {@code high} */
    public PriceRange {
        if (low.cents() < 0) {
            throw new IllegalArgumentException("low price " + low.toDollars() + " is negative; prices start at 0");
        }
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException(
                    "low price " + low.toDollars() + " is above high price " + high.toDollars() + "; swap them");
        }
    }

    /** A range in whole dollars. */
    public static PriceRange ofDollars(long low, long high) {
        return new PriceRange(Money.ofDollars(low), Money.ofDollars(high));
    }

    /** One known price. */
    public static PriceRange exactly(Money price) {
        return new PriceRange(price, price);
    }

    /** From the lowest to the highest price among the ranges; empty if there are none. */
    public static Optional<PriceRange> spanning(Collection<PriceRange> ranges) {
        return ranges.stream().reduce((a, b) -> new PriceRange(
                a.low().compareTo(b.low()) <= 0 ? a.low() : b.low(),
                a.high().compareTo(b.high()) >= 0 ? a.high() : b.high()));
    }

    /** Half way between low and high, to the cent, rounded down. */
    public Money middle() {
        return new Money((low.cents() + high.cents()) / 2);
    }

    /** The sum of both ends. */
    public PriceRange plus(PriceRange other) {
        return new PriceRange(low.plus(other.low), high.plus(other.high));
    }

    /** This range taken {@code count} times. */
    public PriceRange times(int count) {
        return new PriceRange(low.times(count), high.times(count));
    }

    /** Whether there is nothing to pay at either end. */
    public boolean isZero() {
        return high.cents() == 0;
    }
}
