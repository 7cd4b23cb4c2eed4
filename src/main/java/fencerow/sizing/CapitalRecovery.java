package fencerow.sizing;

import fencerow.terms.Money;
import fencerow.terms.Ratio;

/**
 * Yearly cost of money and value lost.
 *
 * <p>Formula: {@code CRF = i (1 + i)^n / ((1 + i)^n - 1)}; a year costs {@code (P - S) CRF + S i} with price P and
 * value S after n years. A real rate is about the nominal one less inflation.
 *
 * <p>Source: {@link Source#MACHINERY_COSTS_BULLETIN}. Valid for 1 to 40 years and 0 to 30 %. Caution:
 * {@link Caution#ESTIMATE_NOT_APPRAISAL}.
 */
public final class CapitalRecovery {
    /** Yearly rate, 0 to 30 %. */
    public static final Bounds<Ratio> RATE = new Bounds<>("rate", Ratio.ofPercent(0), Ratio.ofPercent(30));

    private CapitalRecovery() {}

    /**
     * The capital recovery factor.
     *
     * @param years 1 to 40
     * @throws IllegalArgumentException outside the limits
     */
    public static double factor(Ratio rate, int years) {
        double i = RATE.check(rate);
        if (years < 1 || years > 40) {
            throw new IllegalArgumentException(years + " years; give 1 to 40");
        }
        return i == 0 ? 1.0 / years : i / -Math.expm1(-years * Math.log1p(i));
    }

    /** Cost of a year, as for {@link #factor}. */
    public static Money yearly(Money price, Money valueAfter, Ratio rate, int years) {
        double lost = price.minus(valueAfter).toDollars() * factor(rate, years);
        return Money.ofDollars(lost + valueAfter.toDollars() * rate.si());
    }
}
