package fencerow.kiosk.stocklist;

import fencerow.kiosk.frame.Place.StaffUnits.Which;
import fencerow.terms.UnitId;
import java.util.List;

/**
 * A page of the list.
 *
 * @param words   that were looked for
 * @param chips   by which the list can be narrowed
 * @param count   how many units there are on all pages, in words
 * @param lines   on this page
 * @param before  whether there is a page before
 * @param after   whether there is a page after
 */
record StockListModel(
        String words, List<Chip> chips, String count, List<Line> lines, boolean before, boolean after) {
    /** Copies the lists. */
    StockListModel {
        chips = List.copyOf(chips);
        lines = List.copyOf(lines);
    }

    /** A way to narrow the list. */
    record Chip(Which which, String words, boolean chosen) {}

    /**
     * A unit.
     *
     * @param about  its id, whether it can be bought, what nobody has checked
     * @param asking what is asked for it
     */
    record Line(UnitId unit, String title, String about, String asking) {}
}
