package fencerow.stock;

import fencerow.terms.Money;
import java.util.Optional;

/**
 * What the seller asks, line by line.
 *
 * @param asking  cash price of the machine
 * @param promo   price that goes with a promotional rate, where there is one; never mixed with the cash price
 * @param freight from the factory
 * @param setup   making it ready to drive
 * @param fees    paperwork and the like
 */
public record AskingPrice(Money asking, Optional<Money> promo, Money freight, Money setup, Money fees) {
    /** @throws IllegalArgumentException if a line is negative */
    public AskingPrice {
        for (Money line : new Money[] {asking, promo.orElse(Money.ZERO), freight, setup, fees}) {
            if (line.cents() < 0) {
                throw new IllegalArgumentException("price line " + line.toDollars() + " is negative; use 0 or more");
            }
        }
    }

    /** Cash price out the door, before tax. */
    public Money outTheDoor() {
        return asking.plus(freight).plus(setup).plus(fees);
    }
}
