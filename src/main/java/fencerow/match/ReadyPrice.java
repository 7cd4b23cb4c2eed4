package fencerow.match;

import fencerow.stock.AskingPrice;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;

/**
 * What a unit costs ready to work: the only price on which two tractors compare. Cash; tax is not in it.
 *
 * @param asking  the seller's lines
 * @param catchUp putting right what is noted on a used machine
 * @param plan    fitting and buying what the work needs
 */
public record ReadyPrice(AskingPrice asking, PriceRange catchUp, PriceRange plan) {
    /** All of it, from low to high. */
    public PriceRange total() {
        return PriceRange.exactly(asking.outTheDoor()).plus(catchUp).plus(plan);
    }

    /** Half way between low and high. */
    public Money middle() {
        return total().middle();
    }
}
