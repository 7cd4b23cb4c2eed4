package fencerow.desk;

import java.time.LocalDate;

/** Whether a unit can be bought. */
public sealed interface Sale {
    /** Anybody can have it. */
    record Open() implements Sale {}

    /**
     * It is put aside for somebody, and not shown to others.
     *
     * @param until the last day; after it the unit is for sale again
     */
    record Held(LocalDate until) implements Sale {}

    /**
     * It is gone.
     *
     * @param on the day it was sold
     */
    record Sold(LocalDate on) implements Sale {}

    /** Anybody can have it. */
    static Sale open() {
        return new Open();
    }

    /** Whether it is shown to shoppers on a day. A clock that was set wrong can end a hold early, never lose it. */
    default boolean isShown(LocalDate today) {
        return this instanceof Open || this instanceof Held held && today.isAfter(held.until());
    }
}
