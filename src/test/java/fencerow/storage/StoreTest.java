package fencerow.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Counter;
import fencerow.desk.Edit;
import fencerow.desk.NotKeptException;
import fencerow.desk.Sale;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.desk.Tally;
import fencerow.desk.VisitBook;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the database keeps, what it says when it cannot, and what is there after damage. */
class StoreTest {
    private static final Set<String> ALL = Set.of("model", "asking", "loader");

    @TempDir
    Path folder;

    private static Clock at(String instant) {
        return Clock.fixed(Instant.parse(instant), ZoneOffset.UTC);
    }

    private static final Clock MAY = at("2026-05-04T15:30:00Z");

    private Store open() throws UnusableStoreException {
        return Store.open(folder, MAY);
    }

    private static StockRow row(String id, String asking) {
        return StockRow.of(new UnitId(id), Map.of("model", "nettle-19", "asking", asking));
    }

    private static StockBook.TakenIn take(StockBook book, boolean replace, boolean keep, StockRow... rows) {
        return book.take(replace, intake -> {
            for (StockRow row : rows) {
                intake.put(row, ALL);
            }
            return keep;
        });
    }

    private static List<String> ids(StockBook book) {
        return book.entries().stream().map(entry -> entry.row().id().value()).toList();
    }

    @Test
    void theNewestMigrationIsTheOneAskedForBeforeTheLibraryIsLoaded() throws IOException {
        try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/fencerow/storage/migration"))) {
            String newest = scripts.map(script -> String.valueOf(script.getFileName()))
                    .map(name -> name.substring(1, name.indexOf("__")))
                    .max((a, b) -> Integer.compare(Integer.parseInt(a), Integer.parseInt(b)))
                    .orElseThrow();
            assertEquals(newest, Migrations.NEWEST);
        }
    }

    @Test
    void whatWasChangedIsThereWhenOpenedAgainAndRecordedWithBeforeAndAfter() throws UnusableStoreException {
        try (Store store = open()) {
            assertInstanceOf(Edit.Outcome.Kept.class, store.stock().add(row("a-1", "100")));
            StockEntry entry = store.stock().find(new UnitId("a-1")).orElseThrow();
            assertInstanceOf(Edit.Outcome.Kept.class, store.stock().edit(Edit.cell(entry, "loader", "yes")));
            assertInstanceOf(Edit.Outcome.Overtaken.class, store.stock().edit(Edit.cell(entry, "loader", "no")));
        }
        try (Store store = open()) {
            StockEntry entry = store.stock().find(new UnitId("a-1")).orElseThrow();
            assertEquals(Optional.of("yes"), entry.row().find("loader"));
            assertEquals(2, entry.version());
            assertEquals(List.of(
                    new Edit.Recorded(new UnitId("a-1"), MAY.instant(), Edit.Origin.DESK, "loader", "", "yes"),
                    new Edit.Recorded(new UnitId("a-1"), MAY.instant(), Edit.Origin.DESK, "id", "", "a-1")),
                    store.stock().changes(10));
            assertEquals(2, store.stock().revision());
            assertEquals(List.of(), store.notices());
        }
    }

    @Test
    void aCellIsEmptiedByABlankTextAndAUnitThereIsNotAddedTwice() throws UnusableStoreException {
        try (Store store = open()) {
            store.stock().add(row("a-1", "100"));
            StockEntry entry = store.stock().find(new UnitId("a-1")).orElseThrow();
            store.stock().edit(Edit.cell(entry, "asking", " "));
            assertEquals(Optional.empty(), store.stock().find(new UnitId("a-1")).orElseThrow().row().find("asking"));
            assertInstanceOf(Edit.Outcome.Refused.class, store.stock().add(row("a-1", "7")));
            assertInstanceOf(Edit.Outcome.Refused.class, store.stock().edit(
                    new Edit(new UnitId("none"), 1, Map.of(), Optional.empty())));
        }
    }

    @Test
    void anIntakeIsTakenWholeOrNotAtAll() throws UnusableStoreException {
        try (Store store = open()) {
            StockBook book = store.stock();
            assertEquals(new StockBook.TakenIn(2, 0, 0, 0, false), take(book, false, false, row("a-1", "1"),
                    row("a-2", "2")));
            assertEquals(List.of(), ids(book));
            assertEquals(0, book.revision());
            assertThrows(IllegalStateException.class, () -> book.take(false, intake -> {
                intake.put(row("a-1", "1"), ALL);
                throw new IllegalStateException("the file ends here");
            }));
            assertEquals(List.of(), ids(book));
            assertEquals(new StockBook.TakenIn(2, 0, 0, 0, true), take(book, false, true, row("a-2", "2"),
                    row("a-1", "1")));
            assertEquals(List.of("a-2", "a-1"), ids(book));
        }
    }

    @Test
    void anIntakeLeavesWhatItDoesNotSpeakOfAndTakesOutOnlyWhatAFileBrought() throws UnusableStoreException {
        try (Store store = open()) {
            StockBook book = store.stock();
            take(book, false, true, row("a-1", "1"), row("a-2", "2"));
            book.add(row("d-1", "9"));
            book.edit(Edit.cell(book.find(new UnitId("a-1")).orElseThrow(), "rear-remotes", "2"));

            assertEquals(new StockBook.TakenIn(0, 1, 0, 1, true), take(book, true, true, row("a-1", "3")));

            assertEquals(List.of("a-1", "d-1"), ids(book));
            StockRow now = book.find(new UnitId("a-1")).orElseThrow().row();
            assertEquals(Map.of("model", "nettle-19", "asking", "3", "rear-remotes", "2"), now.cells());
        }
    }

    @Test
    void aHoldEndsByTheDayAndNeverDisappearsWithTheClock() throws UnusableStoreException {
        try (Store store = open()) {
            store.stock().add(row("a-1", "1"));
            StockEntry entry = store.stock().find(new UnitId("a-1")).orElseThrow();
            store.stock().edit(Edit.sale(entry, new Sale.Held(LocalDate.parse("2026-05-06"))));
        }
        // The clock jumps back by a year, and far ahead.
        try (Store store = Store.open(folder, at("2025-05-04T00:00:00Z"))) {
            Sale sale = store.stock().find(new UnitId("a-1")).orElseThrow().sale();
            assertFalse(sale.isShown(LocalDate.parse("2025-05-04")));
            assertFalse(sale.isShown(LocalDate.parse("2026-05-06")));
            assertTrue(sale.isShown(LocalDate.parse("2026-05-07")));
            StockEntry entry = store.stock().find(new UnitId("a-1")).orElseThrow();
            store.stock().edit(Edit.cell(entry, "asking", "5"));
            assertEquals("asking", store.stock().changes(1).get(0).field());
        }
    }

    @Test
    void aDamagedFileIsRestoredFromTheNewestBackupWhateverTheClockSaid() throws Exception {
        try (Store store = Store.open(folder, at("2027-01-01T00:00:00Z"))) {
            store.stock().add(row("a-1", "1"));
        }
        // An earlier day by the clock, and the later backup all the same.
        try (Store store = Store.open(folder, at("2020-01-01T00:00:00Z"))) {
            store.stock().add(row("a-2", "1"));
        }
        damage();

        try (Store store = open()) {
            assertEquals(List.of("a-1"), ids(store.stock()));
            assertEquals(1, store.notices().size());
            assertTrue(store.notices().get(0).contains("the backup of 2020-01-01 is in its place"),
                    store.notices().toString());
            assertTrue(Files.exists(folder.resolve("damaged-1.db")));
        }
    }

    @Test
    void damageWithoutABackupStartsAnewAndSaysSo() throws Exception {
        Files.createDirectories(folder);
        Files.writeString(folder.resolve(Store.FILE), "this was never a database, it only has its name ".repeat(99));
        try (Store store = open()) {
            assertEquals(List.of(), ids(store.stock()));
            assertTrue(store.notices().get(0).contains("there was no backup"), store.notices().toString());
        }
    }

    private void damage() throws IOException {
        try (RandomAccessFile file = new RandomAccessFile(folder.resolve(Store.FILE).toFile(), "rw")) {
            file.seek(100);
            file.write(new byte[(int) file.length() - 100]);
        }
    }

    @Test
    void onlySevenBackupsAreKept() throws Exception {
        for (int day = 10; day < 20; day++) {
            Store.open(folder, at("2026-05-" + day + "T00:00:00Z")).close();
            Store.open(folder, at("2026-05-" + day + "T08:00:00Z")).close();
        }
        List<Backups.Backup> all = new Backups(folder.resolve("backups")).all();
        assertEquals(List.of(10L, 9L, 8L, 7L, 6L, 5L, 4L), all.stream().map(Backups.Backup::number).toList());
    }

    @Test
    void aFolderThatCannotBeIsSaidWithWhatToDo() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "not a folder");
        var e = assertThrows(UnusableStoreException.class, () -> Store.open(file.resolve("data"), MAY));
        assertTrue(String.valueOf(e.getMessage()).contains("let this user write there"), e.getMessage());
    }

    @Test
    void aFullDiskKeepsNothingOfAnIntakeAndSaysSo() throws UnusableStoreException {
        open().close();
        var file = new DatabaseFile(folder.resolve(Store.FILE), 40);
        StockBook book = new SqlStockBook(file, MAY);
        take(book, false, true, row("a-1", "1"));

        var e = assertThrows(NotKeptException.class, () -> book.take(false, intake -> {
            for (int i = 0; i < 10_000; i++) {
                intake.put(row("b-" + i, "1"), ALL);
            }
            return true;
        }));

        assertEquals(NotKeptException.Cause.DISK_FULL, e.why());
        assertEquals(List.of("a-1"), ids(book));
        StockEntry entry = book.find(new UnitId("a-1")).orElseThrow();
        Edit.Outcome big = book.edit(Edit.cell(entry, "notes", "x".repeat(1_000_000)));
        assertEquals(new Edit.Outcome.NotKept(NotKeptException.Cause.DISK_FULL), big);
        assertTrue(file.isWhole());
    }

    @Test
    void countsAreWrittenThreeVisitsAtATimeAndSummedByDay() throws UnusableStoreException {
        var read = Counter.of(Counter.Kind.READ, "loader");
        try (Store store = open()) {
            var book = new VisitBook(store.journal(), MAY);
            LocalDate day = LocalDate.parse("2026-05-04");
            book.ended(Tally.NONE.plus(read, 1));
            book.ended(Tally.NONE.plus(read, 1));
            assertEquals(Tally.NONE, store.journal().sum(day, day));
            book.ended(Tally.NONE.plus(read, 2));
            assertEquals(Tally.NONE.plus(read, 4), store.journal().sum(day, day));
            store.journal().add(day, Tally.NONE.plus(read, 3));
            assertEquals(7, store.journal().sum(day.minusDays(30), day).count(read));
            assertEquals(Tally.NONE, store.journal().sum(day.plusDays(1), day.plusDays(9)));
        }
    }

    @Test
    void columnsAndNotesAreRemembered() throws UnusableStoreException {
        try (Store store = open()) {
            store.memory().rememberColumns(Map.of("Our price", "asking"));
            store.memory().remember("stock-file", "one");
            store.memory().remember("stock-file", "two");
        }
        try (Store store = open()) {
            assertEquals(Map.of("Our price", "asking"), store.memory().columns());
            assertEquals(Optional.of("two"), store.memory().find("stock-file"));
            assertEquals(Optional.empty(), store.memory().find("nothing"));
        }
    }
}
