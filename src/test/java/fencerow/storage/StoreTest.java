package fencerow.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Edit;
import fencerow.desk.NotKeptException;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.io.RandomAccessFile;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the file keeps, what it says when it cannot, and what is there after damage. */
class StoreTest extends StoreContract {
    @TempDir
    Path folder;

    @Override
    Store open(Clock clock) throws UnusableStoreException {
        return Store.open(folder, clock);
    }

    @Test
    void theNewestMigrationIsTheOneAskedForBeforeTheLibraryIsLoaded() throws IOException {
        try (Stream<Path> scripts = Files.list(Path.of("src/main/resources/fencerow/storage/migration"))) {
            String newest = scripts.map(script -> String.valueOf(script.getFileName()))
                    .map(name -> name.substring(1, name.indexOf("__")))
                    .max((a, b) -> Integer.compare(Integer.parseInt(a), Integer.parseInt(b)))
                    .orElseThrow();
            assertEquals(Integer.parseInt(newest), Migrations.NEWEST);
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
    void aPowerCutBetweenTheDamagedFilesGoingAndTheBackupsComingLosesNeither() throws Exception {
        try (Store store = open()) {
            store.stock().add(row("a-1", "1"));
        }
        Store.open(folder, at("2026-06-01T00:00:00Z")).close();
        var backups = new Backups(folder.resolve("backups"));
        assertEquals("2026-06-01", backups.prepare().orElseThrow().day());
        Files.move(folder.resolve(Store.FILE), folder.resolve("damaged-1.db"));

        try (Store store = open()) {
            assertEquals(List.of("a-1"), ids(store.stock()));
            assertFalse(Files.exists(backups.prepared()));
            assertTrue(Files.exists(folder.resolve("damaged-1.db")));
        }
    }
}
