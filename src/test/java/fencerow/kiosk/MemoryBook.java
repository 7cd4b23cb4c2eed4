package fencerow.kiosk;

import fencerow.content.Content;
import fencerow.content.StockFile;
import fencerow.desk.Edit;
import fencerow.desk.Sale;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.terms.UnitId;
import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;

/** A stock book that forgets everything, so that screens can be drawn without a database. */
final class MemoryBook implements StockBook {
    private static final Instant AT = Instant.parse("2026-03-02T10:15:30Z");

    private final Map<UnitId, StockEntry> entries = new LinkedHashMap<>();
    private final List<Edit.Recorded> changes = new ArrayList<>();

    /** The demo showroom's units, some of them changed already. */
    static MemoryBook demo(Content content) {
        var book = new MemoryBook();
        new StockFile(content.units(), Map.of(), Map.of()).read(Path.of("kiosk-config", "stock.csv"), Map.of(),
                (row, said) -> book.entries.put(row.id(), new StockEntry(row, Sale.open(), 1, AT)), rows -> { });
        StockEntry first = book.entries.values().iterator().next();
        book.edit(Edit.cell(first, "asking", "16900"));
        book.edit(Edit.sale(book.find(first.row().id()).orElseThrow(), new Sale.Held(
                LocalDate.parse("2026-03-09"))));
        return book;
    }

    @Override
    public synchronized List<StockEntry> entries() {
        return List.copyOf(entries.values());
    }

    @Override
    public synchronized Optional<StockEntry> find(UnitId unit) {
        return Optional.ofNullable(entries.get(unit));
    }

    @Override
    public synchronized Edit.Outcome edit(Edit edit) {
        StockEntry before = entries.get(edit.unit());
        if (before == null) {
            return new Edit.Outcome.Refused("there is no such unit");
        }
        if (before.version() != edit.version()) {
            return new Edit.Outcome.Overtaken(before);
        }
        StockEntry now = new StockEntry(before.row().with(edit.cells()), edit.sale().orElse(before.sale()),
                before.version() + 1, AT);
        edit.cells().forEach((field, text) -> changes.add(0, new Edit.Recorded(edit.unit(), AT, Edit.Origin.DESK,
                field, before.row().find(field).orElse(""), text)));
        edit.sale().ifPresent(sale -> changes.add(0, new Edit.Recorded(edit.unit(), AT, Edit.Origin.DESK,
                "sale", "open", sale instanceof Sale.Held held ? "held " + held.until() : "open")));
        entries.put(edit.unit(), now);
        return new Edit.Outcome.Kept(now);
    }

    @Override
    public synchronized Edit.Outcome add(StockRow row) {
        StockEntry entry = new StockEntry(row, Sale.open(), 1, AT);
        return entries.putIfAbsent(row.id(), entry) == null
                ? new Edit.Outcome.Kept(entry)
                : new Edit.Outcome.Refused("it is there");
    }

    @Override
    public synchronized List<Edit.Recorded> changes(int most) {
        return List.copyOf(changes.subList(0, Math.min(most, changes.size())));
    }

    @Override
    public long revision() {
        return changes.size();
    }

    @Override
    public TakenIn take(boolean replace, Predicate<Intake> rows) {
        throw new UnsupportedOperationException("screens take nothing in");
    }
}
