package fencerow.desk;

import java.time.Clock;
import java.time.LocalDate;
import java.time.ZoneId;

/**
 * Where staff work on the stock.
 *
 * @param book  the units
 * @param form  what can be written of them
 * @param clock dates holds and sales, by the machine's own zone
 */
public record StockDesk(StockBook book, StockForm form, Clock clock) {
    /** The day it is here. */
    public LocalDate today() {
        return LocalDate.now(clock);
    }

    /** The zone that times are told in. */
    public ZoneId zone() {
        return clock.getZone();
    }
}
