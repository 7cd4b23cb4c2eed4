package fencerow.desk;

import fencerow.terms.UnitId;
import java.time.Instant;
import java.util.Map;
import java.util.Optional;

/**
 * A change that staff make to one unit.
 *
 * @param unit    which
 * @param version of the entry that it was made from
 * @param cells   written anew, by column; a blank text empties the cell
 * @param sale    whether it can be bought from now on; empty where that stays
 */
public record Edit(UnitId unit, int version, Map<String, String> cells, Optional<Sale> sale) {
    /** Copies the cells. */
    public Edit {
        cells = Map.copyOf(cells);
    }

    /** Writes one cell of the entry anew. */
    public static Edit cell(StockEntry entry, String column, String text) {
        return new Edit(entry.row().id(), entry.version(), Map.of(column, text), Optional.empty());
    }

    /** Says whether it can be bought from now on. */
    public static Edit sale(StockEntry entry, Sale sale) {
        return new Edit(entry.row().id(), entry.version(), Map.of(), Optional.of(sale));
    }

    /** How a change went. */
    public sealed interface Outcome {
        /** It is kept, and will be there after a power cut. */
        record Kept(StockEntry now) implements Outcome {}

        /** Somebody else changed the unit meanwhile; nothing was done. */
        record Overtaken(StockEntry now) implements Outcome {}

        /** There is no such unit, or, for a new one, it is there already. */
        record Refused(String why) implements Outcome {}

        /** The database could not keep it. */
        record NotKept(NotKeptException.Cause why) implements Outcome {}
    }

    /**
     * One change as it was recorded.
     *
     * @param unit   which
     * @param at     when, by the clock of the machine
     * @param origin where it came from
     * @param field  the column, or {@code sale}
     * @param before what stood there; empty where nothing did
     * @param after  what stands there now; empty where nothing does
     */
    public record Recorded(UnitId unit, Instant at, Origin origin, String field, String before, String after) {}

    /** Where a change came from. */
    public enum Origin {
        /** A file that was imported. */
        FILE("file"),
        /** The staff area. */
        DESK("desk");

        private final String id;

        Origin(String id) {
            this.id = id;
        }

        /** The word used in the database. */
        public String id() {
            return id;
        }
    }
}
