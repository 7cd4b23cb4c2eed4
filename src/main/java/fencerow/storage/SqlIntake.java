package fencerow.storage;

import fencerow.desk.Edit;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.terms.UnitId;
import java.sql.PreparedStatement;
import java.sql.SQLException;
import java.time.Instant;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionException;

/** Rows on their way into the tables, in one transaction. New units go in by batches, because there may be many. */
final class SqlIntake implements StockBook.Intake, AutoCloseable {
    private static final int BATCH = 500;

    private final UnitTables tables;
    private final Instant now;
    private final Map<String, StockEntry> before;
    private final Set<String> missing;
    private final PreparedStatement units;
    private final PreparedStatement cells;
    private final PreparedStatement changes;
    private long place;
    private long number;
    private int waiting;
    private int added;
    private int changed;
    private int same;
    private int removed;

    SqlIntake(Handle handle, Instant now) {
        this.tables = new UnitTables(handle);
        this.now = now;
        this.before = SqlStockBook.before(handle);
        this.missing = SqlStockBook.fromFiles(handle);
        this.place = tables.nextPlace();
        this.number = tables.nextNumber();
        try {
            units = handle.getConnection().prepareStatement(
                    "insert into unit (id, place, origin, sale, sale_day, version, changed_at) "
                            + "values (?, ?, ?, 'open', null, 1, ?)");
            cells = handle.getConnection().prepareStatement(
                    "insert into unit_cell (unit, field, content) values (?, ?, ?)");
            changes = handle.getConnection().prepareStatement("insert into unit_change (number, unit, changed_at, "
                    + "origin, field, before_text, after_text) values (?, ?, ?, ?, 'id', '', ?)");
        } catch (SQLException e) {
            throw new TransactionException("the rows could not be written", e);
        }
    }

    @Override
    public void put(StockRow row, Set<String> said) {
        String id = row.id().value();
        missing.remove(id);
        StockEntry old = before.get(id);
        if (old == null) {
            add(row);
            return;
        }
        StockRow merged = SqlStockBook.merged(old, row, said);
        if (merged.equals(old.row())) {
            same++;
        } else {
            flush();
            tables.update(old, merged, old.sale(), Edit.Origin.FILE, now);
            number = tables.nextNumber();
            changed++;
        }
    }

    private void add(StockRow row) {
        String id = row.id().value();
        try {
            units.setString(1, id);
            units.setLong(2, place++);
            units.setString(3, Edit.Origin.FILE.id());
            units.setString(4, now.toString());
            units.addBatch();
            for (Map.Entry<String, String> cell : row.cells().entrySet()) {
                cells.setString(1, id);
                cells.setString(2, cell.getKey());
                cells.setString(3, cell.getValue());
                cells.addBatch();
            }
            changes.setLong(1, number++);
            changes.setString(2, id);
            changes.setString(3, now.toString());
            changes.setString(4, Edit.Origin.FILE.id());
            changes.setString(5, id);
            changes.addBatch();
        } catch (SQLException e) {
            throw new TransactionException("the rows could not be written", e);
        }
        added++;
        if (++waiting == BATCH) {
            flush();
        }
    }

    private void flush() {
        if (waiting == 0) {
            return;
        }
        try {
            units.executeBatch();
            cells.executeBatch();
            changes.executeBatch();
        } catch (SQLException e) {
            throw new TransactionException("the rows could not be written", e);
        }
        waiting = 0;
    }

    /** Takes out what the file does not bring any more, and says what it all came to. */
    StockBook.TakenIn finish(boolean replace, boolean keep) {
        flush();
        if (replace) {
            for (String id : new TreeSet<>(missing)) {
                tables.delete(new UnitId(id), now);
                removed++;
            }
        }
        if (keep && added + changed + removed > 0) {
            tables.raiseRevision();
        }
        return new StockBook.TakenIn(added, changed, same, removed, keep);
    }

    @Override
    public void close() {
        try (units; cells; changes) {
            waiting = 0;
        } catch (SQLException e) {
            throw new TransactionException("the rows could not be written", e);
        }
    }
}
