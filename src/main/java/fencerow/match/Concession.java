package fencerow.match;

import fencerow.needs.Requirement;
import fencerow.terms.Money;

/** One thing a shopper could give up to get a unit ready, or within the budget. */
public sealed interface Concession {
    /** Ready to work after it. */
    ReadyPrice price();

    /**
     * Doing without a must-have.
     *
     * @param dropped the must-have
     * @param price   ready to work without it
     */
    record Without(Requirement dropped, ReadyPrice price) implements Concession {}

    /**
     * Spending more.
     *
     * @param by    how much more
     * @param price ready to work as it is
     */
    record Raise(Money by, ReadyPrice price) implements Concession {}
}
