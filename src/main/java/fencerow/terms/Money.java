package fencerow.terms;

/**
 * An amount of US dollars, whole cents.
 *
 * @param cents may be negative (a trade difference)
 */
public record Money(long cents) implements Comparable<Money> {
    /** Nothing. */
    public static final Money ZERO = new Money(0);

    /** Whole dollars. */
    public static Money ofDollars(long dollars) {
        return new Money(Math.multiplyExact(dollars, 100));
    }

    /** Nearest cent; halves away from zero. */
    public static Money ofDollars(double dollars) {
        return new Money(Math.round(dollars * 100));
    }

    /** Dollars, with cents as the fraction. */
    public double toDollars() {
        return cents / 100.0;
    }

    /** The sum of this and {@code other}. */
    public Money plus(Money other) {
        return new Money(Math.addExact(cents, other.cents));
    }

    /** This less {@code other}. */
    public Money minus(Money other) {
        return new Money(Math.subtractExact(cents, other.cents));
    }

    /** This taken {@code count} times. */
    public Money times(int count) {
        return new Money(Math.multiplyExact(cents, count));
    }

    @Override
    public int compareTo(Money other) {
        return Long.compare(cents, other.cents);
    }
}
