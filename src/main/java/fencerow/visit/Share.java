package fencerow.visit;

/**
 * How many of how many, and what that says of all others like them.
 *
 * @param count how many
 * @param of    of how many, at least as many and above 0
 */
public record Share(long count, long of) {
    /** The normal deviate of 95 %: the standard normal distribution's quantile of 0.975. */
    private static final double DEVIATE = 1.959963984540054;

    /** @throws IllegalArgumentException if it is no share of anything */
    public Share {
        if (of < 1 || count < 0 || count > of) {
            throw new IllegalArgumentException(count + " of " + of + " is no share");
        }
    }

    /** The share seen, from 0 to 1. */
    public double seen() {
        return (double) count / of;
    }

    /**
     * The lower bound of the true share at 95 %: Wilson's score interval, which holds for few cases too where the usual
     * one does not. Source: E. B. Wilson, Journal of the American Statistical Association 22 (1927), 209-212. Right as
     * far as each visit is a draw of its own; the same person asking twice is not.
     */
    public double low() {
        return count == 0 ? 0 : Math.max(0, center() - reach());
    }

    /** The upper bound at 95 %, see {@link #low}. */
    public double high() {
        return count == of ? 1 : Math.min(1, center() + reach());
    }

    private double center() {
        return (seen() + DEVIATE * DEVIATE / (2.0 * of)) / (1 + DEVIATE * DEVIATE / of);
    }

    private double reach() {
        double spread = seen() * (1 - seen()) / of + DEVIATE * DEVIATE / (4.0 * of * of);
        return DEVIATE * Math.sqrt(spread) / (1 + DEVIATE * DEVIATE / of);
    }
}
