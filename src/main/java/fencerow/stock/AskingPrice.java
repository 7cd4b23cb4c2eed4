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
 * @param trade   what this seller allows for the shopper's own tractor; empty where that is the showroom's to say
 */
public record AskingPrice(
        Money asking, Optional<Money> promo, Money freight, Money setup, Money fees, Optional<Money> trade) {
    /** @throws IllegalArgumentException if a line is negative */
    public AskingPrice {
        for (Money line : new Money[] {
            asking, promo.orElse(Money.ZERO), freight, setup, fees, trade.orElse(Money.ZERO)
        }) {
            if (line.cents() < 0) {
                throw new IllegalArgumentException("price line " + line.toDollars() + " is negative; use 0 or more");
            }
        }
    }

    /** As a stock list has it: what is allowed for a trade-in is between seller and shopper. */
    public AskingPrice(Money asking, Optional<Money> promo, Money freight, Money setup, Money fees) {
        this(asking, promo, freight, setup, fees, Optional.empty());
    }

    /** The same with so much allowed, where the seller has not said otherwise. */
    public AskingPrice allowing(Money usual) {
        return new AskingPrice(asking, promo, freight, setup, fees, trade.or(() -> Optional.of(usual)));
    }

    /** Cash price out the door, before tax and before a trade-in. */
    public Money outTheDoor() {
        return asking.plus(freight).plus(setup).plus(fees);
    }
}
