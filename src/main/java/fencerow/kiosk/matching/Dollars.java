package fencerow.kiosk.matching;

import fencerow.terms.Money;

/** Whole dollars that are typed on a keypad. */
public final class Dollars {
    private static final long MOST = 999_999;

    private Dollars() {}

    /** With digits more at the end; as it was where that is more than a tractor costs. */
    public static Money typed(Money now, String digits) {
        long whole = now.cents() / 100;
        long next = Long.parseLong(whole == 0 ? digits : whole + digits);
        return next > MOST ? now : Money.ofDollars(next);
    }

    /** Without the last digit. */
    public static Money takenAway(Money now) {
        return Money.ofDollars(now.cents() / 1000);
    }
}
