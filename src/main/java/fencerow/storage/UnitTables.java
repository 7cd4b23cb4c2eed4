package fencerow.storage;

import fencerow.desk.Edit;
import fencerow.desk.Sale;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.terms.UnitId;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.time.Instant;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;

/** The statements that the book and an intake share, within one transaction. */
final class UnitTables {
    private static final String SALE = "sale";

    private final Handle handle;

    UnitTables(Handle handle) {
        this.handle = handle;
    }

    /** A unit without its cells. */
    record Head(UnitId id, Sale sale, int version, Instant changed) {
        StockEntry with(Map<String, String> cells) {
            return new StockEntry(StockRow.of(id, cells), sale, version, changed);
        }
    }

    List<StockEntry> all() {
        Map<String, Map<String, String>> cells = new HashMap<>();
        handle.createQuery("select unit, field, content from unit_cell")
                .map((row, context) -> cells.computeIfAbsent(row.getString(1), unit -> new TreeMap<>())
                        .put(row.getString(2).intern(), row.getString(3).intern()))
                .forEach(before -> { });
        return handle.createQuery("select id, sale, sale_day, version, changed_at from unit order by place, id")
                .map((row, context) -> head(row))
                .stream()
                .map(head -> head.with(cells.getOrDefault(head.id().value(), Map.of())))
                .toList();
    }

    Optional<StockEntry> find(UnitId unit) {
        return handle.createQuery("select id, sale, sale_day, version, changed_at from unit where id = :id")
                .bind("id", unit.value())
                .map((row, context) -> head(row))
                .findOne()
                .map(head -> head.with(cells(unit)));
    }

    private static Head head(ResultSet row) throws SQLException {
        String day = Objects.requireNonNullElse(row.getString("sale_day"), "");
        Sale sale = switch (row.getString("sale")) {
            case "held" -> new Sale.Held(LocalDate.parse(day));
            case "sold" -> new Sale.Sold(LocalDate.parse(day));
            default -> Sale.open();
        };
        return new Head(new UnitId(row.getString("id")), sale, row.getInt("version"),
                Instant.parse(row.getString("changed_at")));
    }

    private Map<String, String> cells(UnitId unit) {
        Map<String, String> cells = new TreeMap<>();
        handle.createQuery("select field, content from unit_cell where unit = :unit")
                .bind("unit", unit.value())
                .map((row, context) -> cells.put(row.getString(1), row.getString(2)))
                .forEach(before -> { });
        return cells;
    }

    /** Adds a unit at the end of the list. */
    void insert(StockRow row, Edit.Origin origin, long place, Instant now) {
        handle.createUpdate("insert into unit (id, place, origin, sale, sale_day, version, changed_at) "
                        + "values (:id, :place, :origin, 'open', null, 1, :now)")
                .bind("id", row.id().value())
                .bind("place", place)
                .bind("origin", origin.id())
                .bind("now", now.toString())
                .execute();
        putCells(row.id(), row.cells());
        record(row.id(), origin, now, Map.of("id", List.of("", row.id().value())));
    }

    /** Writes what is different of an entry, and records it. */
    void update(StockEntry before, StockRow row, Sale sale, Edit.Origin origin, Instant now) {
        Map<String, List<String>> changes = changes(before, row, sale);
        for (Map.Entry<String, List<String>> change : changes.entrySet()) {
            if (!change.getKey().equals(SALE) && change.getValue().get(1).isEmpty()) {
                handle.createUpdate("delete from unit_cell where unit = :unit and field = :field")
                        .bind("unit", row.id().value())
                        .bind("field", change.getKey())
                        .execute();
            }
        }
        Map<String, String> written = new TreeMap<>(row.cells());
        written.keySet().retainAll(changes.keySet());
        putCells(row.id(), written);
        handle.createUpdate("update unit set sale = :sale, sale_day = :day, version = version + 1, changed_at = :now "
                        + "where id = :id")
                .bind("sale", word(sale))
                .bind("day", day(sale).orElse(null))
                .bind("now", now.toString())
                .bind("id", row.id().value())
                .execute();
        record(row.id(), origin, now, changes);
    }

    /** For each field that is different: what stood there and what stands there now. */
    static Map<String, List<String>> changes(StockEntry before, StockRow row, Sale sale) {
        Map<String, List<String>> changes = new TreeMap<>();
        TreeSet<String> fields = new TreeSet<>(before.row().cells().keySet());
        fields.addAll(row.cells().keySet());
        for (String field : fields) {
            String old = before.row().find(field).orElse("");
            String now = row.find(field).orElse("");
            if (!old.equals(now)) {
                changes.put(field, List.of(old, now));
            }
        }
        if (!before.sale().equals(sale)) {
            changes.put(SALE, List.of(text(before.sale()), text(sale)));
        }
        return changes;
    }

    private void putCells(UnitId unit, Map<String, String> cells) {
        if (cells.isEmpty()) {
            return;
        }
        var batch = handle.prepareBatch("insert into unit_cell (unit, field, content) values (:unit, :field, :content) "
                + "on conflict (unit, field) do update set content = excluded.content");
        cells.forEach((field, text) ->
                batch.bind("unit", unit.value()).bind("field", field).bind("content", text).add());
        batch.execute();
    }

    void delete(UnitId unit, Instant now) {
        handle.createUpdate("delete from unit where id = :id").bind("id", unit.value()).execute();
        record(unit, Edit.Origin.FILE, now, Map.of("id", List.of(unit.value(), "")));
    }

    private void record(UnitId unit, Edit.Origin origin, Instant now, Map<String, List<String>> changes) {
        long number = nextNumber();
        for (Map.Entry<String, List<String>> change : new TreeMap<>(changes).entrySet()) {
            handle.createUpdate("insert into unit_change (number, unit, changed_at, origin, field, before_text, "
                            + "after_text) values (:number, :unit, :now, :origin, :field, :before, :after)")
                    .bind("number", number++)
                    .bind("unit", unit.value())
                    .bind("now", now.toString())
                    .bind("origin", origin.id())
                    .bind("field", change.getKey())
                    .bind("before", change.getValue().get(0))
                    .bind("after", change.getValue().get(1))
                    .execute();
        }
    }

    long nextNumber() {
        return handle.createQuery("select coalesce(max(number), 0) + 1 from unit_change").mapTo(Long.class).one();
    }

    List<Edit.Recorded> recorded(int most) {
        return handle.createQuery("select unit, changed_at, origin, field, before_text, after_text from unit_change "
                        + "order by number desc limit :most")
                .bind("most", most)
                .map((row, context) -> new Edit.Recorded(
                        new UnitId(row.getString(1)),
                        Instant.parse(row.getString(2)),
                        row.getString(3).equals(Edit.Origin.DESK.id()) ? Edit.Origin.DESK : Edit.Origin.FILE,
                        row.getString(4), row.getString(5), row.getString(6)))
                .list();
    }

    long nextPlace() {
        return handle.createQuery("select coalesce(max(place), 0) + 1 from unit").mapTo(Long.class).one();
    }

    void raiseRevision() {
        handle.createUpdate("update revision set number = number + 1").execute();
    }

    long revision() {
        return handle.createQuery("select number from revision").mapTo(Long.class).one();
    }

    private static String word(Sale sale) {
        return sale instanceof Sale.Held ? "held" : sale instanceof Sale.Sold ? "sold" : "open";
    }

    private static Optional<String> day(Sale sale) {
        if (sale instanceof Sale.Held held) {
            return Optional.of(held.until().toString());
        }
        return sale instanceof Sale.Sold sold ? Optional.of(sold.on().toString()) : Optional.empty();
    }

    private static String text(Sale sale) {
        return day(sale).map(day -> word(sale) + " " + day).orElse(word(sale));
    }
}
