package fencerow.match;

import fencerow.stock.AskingPrice;
import fencerow.terms.Money;
import fencerow.terms.Payment;
import fencerow.terms.PriceRange;

/**
 * What a unit costs ready to work: the only price on which two tractors compare. Cash; tax is not in it.
 *
 * @param asking  the seller's lines
 * @param catchUp putting right what is noted on a used machine
 * @param plan    fitting and buying what the work needs
 */
public record ReadyPrice(AskingPrice asking, PriceRange catchUp, PriceRange plan) {
    /** All lines but the trade-in, from low to high. */
    public PriceRange beforeTrade() {
        return PriceRange.exactly(asking.outTheDoor()).plus(catchUp).plus(plan);
    }

    /** What the seller allows for the shopper's own tractor. */
    public Money trade() {
        return asking.trade().orElse(Money.ZERO);
    }

    /** What is paid in all, the trade difference, from low to high. */
    public Payment total() {
        return Payment.of(beforeTrade()).less(trade());
    }

    /** Half way between low and high. */
    public Money middle() {
        return total().middle();
    }
}
