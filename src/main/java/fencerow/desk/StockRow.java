package fencerow.desk;

import fencerow.terms.UnitId;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * One unit as it is written in the stock list: what it says in each column, in the words of the list. What the words
 * come to is worked out against the content, so that a unit outlives a change of it.
 *
 * @param id    of the unit
 * @param cells the filled cells by column, the id's left out; blank ones are dropped
 */
public record StockRow(UnitId id, SortedMap<String, String> cells) {
    /** Copies and sorts the cells. */
    public StockRow {
        TreeMap<String, String> filled = new TreeMap<>();
        cells.forEach((column, text) -> {
            if (!text.isBlank()) {
                filled.put(column, text.strip());
            }
        });
        cells = Collections.unmodifiableSortedMap(filled);
    }

    /** A row with these cells. */
    public static StockRow of(UnitId id, Map<String, String> cells) {
        return new StockRow(id, new TreeMap<>(cells));
    }

    /** What the column says, if anything. */
    public Optional<String> find(String column) {
        return Optional.ofNullable(cells.get(column));
    }

    /** With some cells written anew; a blank text empties its cell. */
    public StockRow with(Map<String, String> changes) {
        TreeMap<String, String> next = new TreeMap<>(cells);
        next.putAll(changes);
        return new StockRow(id, next);
    }
}
