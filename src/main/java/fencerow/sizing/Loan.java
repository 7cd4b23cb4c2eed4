package fencerow.sizing;

import fencerow.terms.Money;
import fencerow.terms.Ratio;

/**
 * Level monthly payments.
 *
 * <p>Formula: {@code pay = P r / (1 - (1 + r)^-N)} with principal P, monthly rate r and N payments; {@code P / N} where
 * r is zero. The rate hidden in an offer is the r at which the payments are worth the cash price.
 *
 * <p>Source: {@link Source#LOAN_FORMULA}. Valid for 1 to 240 payments and yearly rates up to 36 %, without fees.
 * Caution: {@link Caution#NOT_AN_OFFER_OF_CREDIT}.
 *
 * @param principal what is borrowed, above zero
 * @param yearly    yearly rate; a twelfth counts each month
 * @param payments  number of monthly payments
 */
public record Loan(Money principal, Ratio yearly, int payments) {
    /** Yearly rate, 0 to 36 %. */
    public static final Bounds<Ratio> RATE = new Bounds<>("rate", Ratio.ofPercent(0), Ratio.ofPercent(36));
    /** Most payments: 20 years. */
    public static final int MOST_PAYMENTS = 240;

    private static final double HIGHEST_MONTHLY = 1;

    /** @throws IllegalArgumentException if a value is outside its limits */
    public Loan {
        RATE.check(yearly);
        if (principal.cents() <= 0) {
            throw new IllegalArgumentException("principal " + principal.toDollars() + " USD; give more than 0");
        }
        if (payments < 1 || payments > MOST_PAYMENTS) {
            throw new IllegalArgumentException(payments + " payments; give 1 to " + MOST_PAYMENTS);
        }
    }

    /** Each payment, to the cent. */
    public Money payment() {
        double monthly = yearly.si() / 12;
        return Money.ofDollars(principal.toDollars() / presentWorth(monthly, payments));
    }

    /** All payments together. */
    public Money total() {
        return payment().times(payments);
    }

    /** What is paid above the principal. */
    public Money interest() {
        return total().minus(principal);
    }

    /**
     * The yearly rate at which payments are worth a cash price: what an offer without interest costs when the buyer
     * gives up a rebate for it.
     *
     * @param cash     price for cash, above zero and not above all payments together
     * @param payment  each monthly payment
     * @param payments 1 to {@link #MOST_PAYMENTS}
     * @throws IllegalArgumentException if the payments do not reach the cash price
     */
    public static Ratio impliedRate(Money cash, Money payment, int payments) {
        double worth = cash.toDollars() / payment.toDollars();
        if (payments < 1 || payments > MOST_PAYMENTS || !(worth > 0) || worth > payments) {
            throw new IllegalArgumentException(payments + " payments of " + payment.toDollars()
                    + " USD do not pay for " + cash.toDollars() + " USD; give payments that reach the cash price");
        }
        double low = 0;
        double high = HIGHEST_MONTHLY;
        for (int i = 0; i < 100; i++) {
            double middle = (low + high) / 2;
            if (presentWorth(middle, payments) > worth) {
                low = middle;
            } else {
                high = middle;
            }
        }
        return new Ratio(12 * low);
    }

    /** What a dollar at each of the payments is worth now. */
    private static double presentWorth(double monthly, int payments) {
        return monthly == 0 ? payments : -Math.expm1(-payments * Math.log1p(monthly)) / monthly;
    }
}
