package fencerow.desk;

import fencerow.stock.Unit;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What can be written of a unit, and what a written row comes to. One reader stands behind it and behind stock lists in
 * files, so that a screen and a file obey the same rules. May be used from any thread.
 */
public interface StockForm {
    /** All columns but the id's, in the order in which they are written. */
    List<StockColumn> columns();

    /** Works out what a row comes to. */
    Reading read(StockRow row);

    /**
     * What a row comes to.
     *
     * @param unit  empty where it is none
     * @param wrong columns in which something stands, or is missing, that keeps it from being one
     */
    record Reading(Optional<Unit> unit, Set<String> wrong) {
        /** Copies the columns. */
        public Reading {
            wrong = Set.copyOf(wrong);
        }
    }
}
