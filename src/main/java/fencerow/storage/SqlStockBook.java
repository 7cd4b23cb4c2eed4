package fencerow.storage;

import fencerow.desk.Edit;
import fencerow.desk.NotKeptException;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.terms.UnitId;
import java.time.Clock;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.function.Predicate;
import org.jdbi.v3.core.Handle;

/** The units' tables. */
final class SqlStockBook implements StockBook {
    private static final String START = "before_the_intake";

    private final Database database;
    private final Clock clock;

    SqlStockBook(Database database, Clock clock) {
        this.database = database;
        this.clock = clock;
    }

    @Override
    public List<StockEntry> entries() {
        return database.read(handle -> handle.inTransaction(whole -> new UnitTables(whole).all()));
    }

    @Override
    public Optional<StockEntry> find(UnitId unit) {
        return database.read(handle -> handle.inTransaction(whole -> new UnitTables(whole).find(unit)));
    }

    @Override
    public List<Edit.Recorded> changes(int most) {
        return database.read(handle -> new UnitTables(handle).recorded(most));
    }

    @Override
    public long revision() {
        return database.read(handle -> new UnitTables(handle).revision());
    }

    @Override
    public Edit.Outcome edit(Edit edit) {
        return kept(tables -> {
            Optional<StockEntry> found = tables.find(edit.unit());
            if (found.isEmpty()) {
                return new Edit.Outcome.Refused("there is no unit [" + edit.unit() + "]");
            }
            StockEntry before = found.get();
            if (before.version() != edit.version()) {
                return new Edit.Outcome.Overtaken(before);
            }
            tables.update(before, before.row().with(edit.cells()), edit.sale().orElse(before.sale()),
                    Edit.Origin.DESK, clock.instant());
            tables.raiseRevision();
            return new Edit.Outcome.Kept(tables.find(edit.unit()).orElseThrow());
        });
    }

    @Override
    public Edit.Outcome add(StockRow row) {
        return kept(tables -> {
            if (tables.find(row.id()).isPresent()) {
                return new Edit.Outcome.Refused("the unit [" + row.id() + "] is there already");
            }
            tables.insert(row, Edit.Origin.DESK, tables.nextPlace(), clock.instant());
            tables.raiseRevision();
            return new Edit.Outcome.Kept(tables.find(row.id()).orElseThrow());
        });
    }

    private Edit.Outcome kept(Function<UnitTables, Edit.Outcome> work) {
        try {
            return database.write(handle -> work.apply(new UnitTables(handle)));
        } catch (NotKeptException e) {
            return new Edit.Outcome.NotKept(e.why());
        }
    }

    @Override
    public TakenIn take(boolean replace, Predicate<Intake> rows) {
        return database.write(handle -> {
            handle.savepoint(START);
            try (var intake = new SqlIntake(handle, clock.instant())) {
                boolean keep = rows.test(intake);
                TakenIn taken = intake.finish(replace, keep);
                if (!keep) {
                    handle.rollbackToSavepoint(START);
                }
                return taken;
            }
        });
    }

    /** What was there before an intake, by id. */
    static Map<String, StockEntry> before(Handle handle) {
        Map<String, StockEntry> before = new HashMap<>();
        new UnitTables(handle).all().forEach(entry -> before.put(entry.row().id().value(), entry));
        return before;
    }

    /** Units that a file brought, by id. */
    static Set<String> fromFiles(Handle handle) {
        return new HashSet<>(handle.createQuery("select id from unit where origin = :origin")
                .bind("origin", Edit.Origin.FILE.id())
                .mapTo(String.class)
                .list());
    }

    /** The row with the cells it does not speak of as they were. */
    static StockRow merged(StockEntry before, StockRow row, Set<String> said) {
        Map<String, String> cells = new TreeMap<>(before.row().cells());
        cells.keySet().removeAll(said);
        cells.putAll(row.cells());
        return StockRow.of(row.id(), cells);
    }
}
