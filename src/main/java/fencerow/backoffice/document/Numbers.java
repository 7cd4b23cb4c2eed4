package fencerow.backoffice.document;

import fencerow.terms.Amount;
import fencerow.terms.Money;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** How numbers are written in documents. */
final class Numbers {
    /** More than any scale or data sheet gives, and few enough to leave out what binary fractions add. */
    private static final MathContext DIGITS = new MathContext(9, RoundingMode.HALF_EVEN);

    private Numbers() {}

    /** Dollars with two decimals. */
    static BigDecimal dollars(Money money) {
        return BigDecimal.valueOf(money.cents(), 2);
    }

    /** The amount in its SI unit. */
    static BigDecimal si(Amount amount) {
        return plain(amount.si());
    }

    /** A number to nine digits, without zeros at its end. */
    static BigDecimal plain(double number) {
        BigDecimal rounded = new BigDecimal(number, DIGITS).stripTrailingZeros();
        return rounded.scale() < 0 ? rounded.setScale(0) : rounded;
    }
}
