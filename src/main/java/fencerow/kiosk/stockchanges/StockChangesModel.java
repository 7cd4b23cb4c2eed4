package fencerow.kiosk.stockchanges;

import java.util.List;

/** The newest changes, newest first. */
record StockChangesModel(List<Line> lines) {
    /** Copies the list. */
    StockChangesModel {
        lines = List.copyOf(lines);
    }

    /**
     * One change.
     *
     * @param unit   what it is, and its id
     * @param when   and where it came from
     * @param change the field, what stood there and what stands there now
     */
    record Line(String unit, String when, String change) {}
}
