package fencerow.terms;

/**
 * What is to be paid, from low to high; below zero where the seller pays, because a trade-in is worth more.
 *
 * @param high at least {@code low}
 */
public record Payment(Money low, Money high) {
    /** @throws IllegalArgumentException if {@code low} is above {@code high} */
    public Payment {
        if (low.compareTo(high) > 0) {
            throw new IllegalArgumentException("low payment " + low.toDollars() + " is above high payment "
                    + high.toDollars() + "; swap them");
        }
    }

    /** A price with nothing taken off. */
    public static Payment of(PriceRange price) {
        return new Payment(price.low(), price.high());
    }

    /** One known amount. */
    public static Payment exactly(Money amount) {
        return new Payment(amount, amount);
    }

    /** With an amount taken off both ends. */
    public Payment less(Money amount) {
        return new Payment(low.minus(amount), high.minus(amount));
    }

    /** Half way between low and high, to the cent, rounded down. */
    public Money middle() {
        return new Money(Math.floorDiv(Math.addExact(low.cents(), high.cents()), 2));
    }
}
