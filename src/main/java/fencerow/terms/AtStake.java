package fencerow.terms;

/**
 * What a wrong belief about a feature costs: money, or the job itself.
 *
 * @param money what putting it right costs
 * @param job   whether it cannot be put right, so that the job is lost
 */
public record AtStake(PriceRange money, boolean job) {
    /** Nothing known to be at stake. */
    public static final AtStake NOTHING = new AtStake(PriceRange.ZERO, false);

    /** Money only. */
    public static AtStake money(PriceRange money) {
        return new AtStake(money, false);
    }
}
