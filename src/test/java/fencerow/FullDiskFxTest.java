package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import fencerow.desk.Edit;
import fencerow.desk.NotKeptException.Cause;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.VisitBook;
import fencerow.kiosk.Fx;
import fencerow.kiosk.HandClock;
import fencerow.kiosk.LiveKiosk;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.visit.Visit;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * The disk that holds the kiosk's data fills up in a visit; rows for the table of {@link ChaosFxTest}. On a limit of
 * files' lengths everywhere, on a real full disk under {@code -Pdisk}, which has to run as root.
 */
class FullDiskFxTest {
    private static final long SMALL = 300_000_000;

    @TempDir
    private Path folder;

    @Test
    void whatCannotBeWrittenIsSaidAndNothingThatWasThereIsLost() throws IOException {
        if (TestDesktop.missing(List.of("prlimit")).isEmpty()) {
            try (FullDisk disk = FullDisk.limited(folder)) {
                fillsUpInAVisit(disk, "no file may grow", "The database could not write it down.");
            }
        } else {
            abort("SKIPPED: no disk was filled; prlimit is not installed");
        }
    }

    @Test
    void aDiskThatIsReallyFullStopsNeitherAVisitNorAStart() throws IOException {
        if (!Boolean.getBoolean("fencerow.disk")) {
            abort("SKIPPED: no real disk was filled; run as root with -Pdisk");
        }
        try (FullDisk disk = FullDisk.mounted(folder.resolve("small"), SMALL)) {
            DemoShowroom demo = fillsUpInAVisit(disk, "disk full", "The disk is full. Make room on it.");
            becomesShort(disk, demo);
            disk.fill(0);
            startsOn(disk, demo, "disk full", Cause.DISK_FULL);
            disk.free();
            FullDisk.remount(disk, true);
            startsOn(disk, demo, "data folder can only be read", Cause.READ_ONLY);
            FullDisk.remount(disk, false);
            startsAgain(disk, demo);
        }
    }

    private static KioskWiring wiring(FullDisk disk) {
        return new KioskWiring(new HandClock(), "", config -> data(disk));
    }

    private static Path data(FullDisk disk) {
        return disk.folder().resolve("data");
    }

    private static StockBook book(Premises premises) {
        return premises.desk().orElseThrow().book();
    }

    /** A change that takes more room than there may be left in files that are there. */
    private static Edit.Outcome change(StockBook book, String letter) {
        StockEntry entry = book.find(StaffDoor.UNIT).orElseThrow();
        return book.edit(Edit.cell(entry, "fence-test", letter.repeat(100_000)));
    }

    private static Optional<String> written(StockBook book) {
        return book.find(StaffDoor.UNIT).orElseThrow().row().find("fence-test");
    }

    private DemoShowroom fillsUpInAVisit(FullDisk disk, String tried, String words) throws IOException {
        DemoShowroom demo = DemoShowroom.in(folder);
        Path lists = disk.folder().resolve("saved");
        demo.change("showroom.yaml", folder.resolve("lists").toString(), lists.toString());
        KioskWiring wiring = wiring(disk);
        // Printed when all is over: where no file may grow, what is printed may be lost too.
        Map<String, String> rows = new LinkedHashMap<>();
        try (LiveKiosk kiosk = LiveKiosk.of(new KioskFiles(wiring, demo.folders()))) {
            Premises premises = ChaosFxTest.nextVisit(kiosk);
            StockBook book = book(premises);
            assertInstanceOf(Edit.Outcome.Kept.class, change(book, "a"));
            Visit visit = ChaosFxTest.startVisit(kiosk);
            saveList(kiosk, "are saved.");
            List<Path> saved = files(lists);
            assertEquals(1, saved.size());

            disk.fill(0);
            try {
                assertInstanceOf(Edit.Outcome.NotKept.class, change(book, "b"));
                Fx.on(() -> {
                    StaffDoor.tryAnotherPrice(premises, words);
                    return true;
                });
                rows.put(tried + ", staff change a price", "\"" + words + "\"; the unit stands as before");
                saveList(kiosk, "Your pages could not be saved.");
                assertEquals(saved, files(lists), "nothing half is left, and nothing is gone");
                assertEquals(visit, Fx.on(() -> kiosk.frame().visit().get()));
                rows.put(tried + ", a list is saved",
                        "\"Your pages could not be saved.\"; the visit goes on, earlier lists are there");
                for (int i = 0; i < 4; i++) {
                    ChaosFxTest.startVisit(kiosk);
                    ChaosFxTest.nextVisit(kiosk);
                }
                assertEquals(premises.showroom().units().size(),
                        ChaosFxTest.nextVisit(kiosk).showroom().units().size());
                rows.put(tried + ", visits end", "nothing; their counts wait in memory");
            } finally {
                disk.free();
            }
            assertEquals(Optional.of("a".repeat(100_000)), written(book));
            assertInstanceOf(Edit.Outcome.Kept.class, change(book, "c"));
            ChaosFxTest.startVisit(kiosk);
            saveList(kiosk, "are saved.");
            ChaosFxTest.nextVisit(kiosk);
            LocalDate today = premises.counts().today();
            kiosk.waitFor(() -> premises.counts().sum(today, today).counts().values().stream()
                    .anyMatch(count -> count > VisitBook.FEWEST), "the counts that waited");
            rows.put(tried + ", then room again", "changes, lists and the counts that waited are kept");
        } finally {
            wiring.close();
        }
        rows.forEach(ChaosFxTest::row);
        return demo;
    }

    private static void saveList(LiveKiosk kiosk, String words) {
        Shopper shopper = new Shopper(kiosk.shown(), kiosk.window().stage());
        Fx.on(() -> {
            kiosk.frame().go(new Place.Home());
            kiosk.frame().go(new Place.Print());
            return true;
        });
        shopper.touch("Save it");
        shopper.waitForWords(words);
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.sorted().toList();
        }
    }

    private static void becomesShort(FullDisk disk, DemoShowroom demo) throws IOException {
        KioskWiring wiring = wiring(disk);
        try (LiveKiosk kiosk = LiveKiosk.of(new KioskFiles(wiring, demo.folders()))) {
            assertEquals(List.of(), ChaosFxTest.nextVisit(kiosk).problems());
            kiosk.waitForOffer(() -> unchecked(() -> disk.fill(100_000_000)));
            String told = ChaosFxTest.nextVisit(kiosk).problems().get(0);
            assertTrue(told.contains("MB are free; free at least 200 MB"), told);
            ChaosFxTest.row("disk nearly full", "nothing; staff read " + told);
            kiosk.waitForOffer(() -> unchecked(disk::free));
            assertEquals(List.of(), ChaosFxTest.nextVisit(kiosk).problems());
        } finally {
            wiring.close();
        }
    }

    private static void startsOn(FullDisk disk, DemoShowroom demo, String tried, Cause why) {
        KioskWiring wiring = wiring(disk);
        try {
            Premises premises = assertInstanceOf(Opening.Open.class, wiring.open(demo.folders())).premises();
            assertEquals(Optional.of("c".repeat(100_000)), written(book(premises)));
            assertEquals(new Edit.Outcome.NotKept(why), change(book(premises), "d"));
            ChaosFxTest.row(tried + ", then a start",
                    "the stock as it was kept last; staff read " + String.join("; ", premises.problems()));
        } finally {
            wiring.close();
        }
    }

    private static void startsAgain(FullDisk disk, DemoShowroom demo) {
        KioskWiring wiring = wiring(disk);
        try {
            Premises again = assertInstanceOf(Opening.Open.class, wiring.open(demo.folders())).premises();
            assertEquals(List.of(), again.problems());
            assertInstanceOf(Edit.Outcome.Kept.class, change(book(again), "e"));
        } finally {
            wiring.close();
        }
    }

    private interface Writing {
        void run() throws IOException;
    }

    private static void unchecked(Writing work) {
        try {
            work.run();
        } catch (IOException e) {
            throw new AssertionError(e);
        }
    }
}
