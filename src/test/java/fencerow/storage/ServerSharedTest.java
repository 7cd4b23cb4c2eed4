package fencerow.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Counter;
import fencerow.desk.Edit;
import fencerow.desk.NotKeptException;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.desk.Tally;
import fencerow.terms.UnitId;
import java.io.PrintWriter;
import java.io.StringWriter;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.time.Clock;
import java.time.Duration;
import java.time.LocalDate;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** Several kiosks on one server: what each sees of the others, and what is there while the server is away. */
@Timeout(60)
class ServerSharedTest {
    private static final Clock MAY = StoreContract.MAY;
    private static final LocalDate DAY = LocalDate.parse("2026-05-04");
    private static final UnitId UNIT = new UnitId("a-1");
    private static final Counter READ = Counter.of(Counter.Kind.READ, "loader");
    private static final Duration SOON = Duration.ofMillis(20);

    @RegisterExtension
    private static final OwnServer OWN = new OwnServer();

    @TempDir
    Path folder;

    private Optional<Server> server = Optional.empty();

    private static TestServer postgres() {
        return OWN.postgres();
    }

    @BeforeEach
    void takeTheDatabase() {
        server = Optional.of(OWN.database());
    }

    private Store kiosk(String name) throws UnusableStoreException {
        return Store.open(folder.resolve(name), server, MAY);
    }

    private static StockEntry unit(Store store) {
        return store.stock().find(UNIT).orElseThrow();
    }

    private static void add(Store store, String asking) {
        assertInstanceOf(Edit.Outcome.Kept.class,
                store.stock().add(StockRow.of(UNIT, Map.of("model", "nettle-19", "asking", asking))));
    }

    @Test
    void twoKiosksThatEditTheSameUnitAreToldAndNeitherEditIsLost() throws Exception {
        try (Store one = kiosk("one"); Store other = kiosk("other")) {
            add(one, "100");
            StockEntry seen = unit(other);
            assertInstanceOf(Edit.Outcome.Kept.class, one.stock().edit(Edit.cell(unit(one), "asking", "90")));

            var overtaken = assertInstanceOf(
                    Edit.Outcome.Overtaken.class, other.stock().edit(Edit.cell(seen, "loader", "yes")));
            assertEquals(Optional.of("90"), overtaken.now().row().find("asking"));
            other.stock().edit(Edit.cell(overtaken.now(), "loader", "yes"));

            assertEquals(Map.of("model", "nettle-19", "asking", "90", "loader", "yes"), unit(one).row().cells());
        }
    }

    @Test
    void editsAtTheSameMomentAreEachKeptOrOvertaken() throws Exception {
        try (Store one = kiosk("one"); Store other = kiosk("other")) {
            add(one, "0");
            int each = 40;
            List<CompletableFuture<Integer>> both = List.of(one, other).stream()
                    .map(store -> CompletableFuture.supplyAsync(() -> countUp(store, each)))
                    .toList();
            int overtaken = both.get(0).join() + both.get(1).join();
            assertEquals(Integer.toString(2 * each), unit(one).row().find("asking").orElseThrow());
            assertEquals(2 * each + 1, unit(one).version());
            assertEquals(2 * each + 1, one.stock().changes(1_000).size());
            assertTrue(overtaken >= 0);
        }
    }

    private static int countUp(Store store, int times) {
        int overtaken = 0;
        int kept = 0;
        while (kept < times) {
            StockEntry now = unit(store);
            int asking = Integer.parseInt(now.row().find("asking").orElseThrow());
            Edit edit = Edit.cell(now, "asking", Integer.toString(asking + 1));
            if (store.stock().edit(edit) instanceof Edit.Outcome.Kept) {
                kept++;
            } else {
                overtaken++;
            }
        }
        return overtaken;
    }

    @Test
    void aChangeWakesThoseWhoFollow() throws Exception {
        try (Store one = kiosk("one"); Store other = kiosk("other")) {
            other.follow(SOON);
            // Without a word from the server this would wait for an hour.
            var woken = CompletableFuture.runAsync(() -> other.follow(Duration.ofHours(1)));
            add(one, "100");
            woken.get(30, TimeUnit.SECONDS);
            assertEquals(1, other.stock().revision());
        }
    }

    @Test
    void whileTheServerIsAwayTheKioskGoesOnWithWhatItSawAlsoAfterARestartAndCatchesUpByItself() throws Exception {
        try (Store other = kiosk("other")) {
            add(other, "100");
            other.journal().add(DAY, Tally.NONE.plus(READ, 5));
        }
        Store one = kiosk("one");
        try {
            one.follow(SOON);
            assertEquals(List.of(), one.notices());
            postgres().kill();

            assertEquals(Optional.of("100"), unit(one).row().find("asking"));
            one.journal().add(DAY, Tally.NONE.plus(READ, 3));
            one.journal().add(DAY, Tally.NONE.plus(READ, 4));
            assertEquals(new Edit.Outcome.NotKept(NotKeptException.Cause.AWAY),
                    one.stock().edit(Edit.cell(unit(one), "asking", "90")));
            assertTrue(one.notices().get(0).contains("does not answer"), one.notices().toString());
            one.close();
            one = kiosk("one");
            assertEquals(Optional.of("100"), unit(one).row().find("asking"));
            assertEquals(5, one.journal().sum(DAY, DAY).count(READ));
            one.journal().add(DAY, Tally.NONE.plus(READ, 10));
            // A code that was not looked up must not count as a wrong one.
            Store away = one;
            assertThrows(NotKeptException.class, () -> away.comeBacks().findRow("c0ffee"));
            assertTrue(one.notices().get(0).contains("2026-05-04T15:30:00Z"), one.notices().toString());
        } finally {
            postgres().startAgain();
        }

        while (!one.notices().isEmpty()) {
            one.follow(SOON);
        }

        assertEquals(22, one.journal().sum(DAY, DAY).count(READ));
        assertInstanceOf(Edit.Outcome.Kept.class, one.stock().edit(Edit.cell(unit(one), "asking", "90")));
        one.close();
    }

    @Test
    void aParcelOfCountsWhoseReceiptWasLostIsCountedOnce() throws Exception {
        kiosk("one").close();
        var waiting = new WaitingCounts(folder.resolve("one"));
        waiting.add(DAY, Tally.NONE.plus(READ, 3));
        Path file = folder.resolve("one").resolve(WaitingCounts.FILE);
        Path before = Files.copy(file, folder.resolve("before"));
        try (var database = new DatabaseServer(server.orElseThrow())) {
            waiting.handIn(database);
            // The disk as it was before the receipt: the parcel is handed in again, with one more after it.
            Files.copy(before, file, StandardCopyOption.REPLACE_EXISTING);
            var again = new WaitingCounts(folder.resolve("one"));
            assertEquals(1, again.waiting());
            again.handIn(database);
            again.add(DAY, Tally.NONE.plus(READ, 4));
            again.handIn(database);
            assertEquals(0, again.waiting());
            assertEquals(7, new SqlJournal(database).sum(DAY, DAY).count(READ));
        }
    }

    @Test
    void aServerThatComesBackWithOlderOrOtherDataIsNoticedAndWhatWasSeenIsKept() throws Exception {
        try (Store one = kiosk("one")) {
            add(one, "100");
            one.stock().edit(Edit.cell(unit(one), "asking", "90"));
            one.follow(SOON);
            one.follow(SOON);
            // As a restored backup has it: the last change never happened, and another one did.
            String name = String.valueOf(server.orElseThrow()).replaceAll(".*/", "");
            postgres().run("update unit_change set after_text = '80' where number = 2", name);
            postgres().run("update revision set number = number + 5", name);

            one.follow(SOON);

            assertTrue(one.notices().get(0).contains("other data than before"), one.notices().toString());
            try (Store kept = Store.open(folder.resolve("look"), MAY)) {
                assertEquals(List.of(), kept.notices());
            }
            var copy = new DatabaseFile(folder.resolve("one").resolve("other-data-1.db"));
            assertEquals(Optional.of("90"),
                    new SqlStockBook(copy, MAY).find(UNIT).orElseThrow().row().find("asking"));

            postgres().run("delete from instance", name);
            one.follow(SOON);
            assertEquals(2, one.notices().size(), one.notices().toString());
            one.follow(SOON);
            assertEquals(2, one.notices().size(), one.notices().toString());
        }
    }

    @Test
    void aRoleOfTheKiosksReadsAndWritesRowsButCannotChangeTheSchema() throws Exception {
        String name = String.valueOf(server.orElseThrow()).replaceAll(".*/", "");
        postgres().run("drop role if exists kiosk_role", name);
        postgres().run("create role kiosk_role login password 'plum-field-31'", name);
        postgres().run("revoke create on schema public from public", name);
        Store.migrate(server.orElseThrow(), Optional.of("kiosk_role"));
        var login = Optional.of(postgres().server(name, "kiosk_role", "plum-field-31"));

        try (Store kiosk = Store.open(folder.resolve("least"), login, MAY);
                var database = new DatabaseServer(login.orElseThrow())) {
            add(kiosk, "100");
            kiosk.journal().add(DAY, Tally.NONE.plus(READ, 3));
            kiosk.follow(SOON);
            assertEquals(List.of(), kiosk.notices());
            for (String statement : List.of("drop table memory", "create table more (id text)",
                    "alter table unit add column more text", "delete from flyway_schema_history")) {
                var e = assertThrows(
                        NotKeptException.class, () -> database.write(handle -> handle.execute(statement)), statement);
                assertEquals(NotKeptException.Cause.READ_ONLY, e.why(), statement);
            }
            assertThrows(UnusableStoreException.class, () -> Store.migrate(
                    postgres().server(name, "kiosk_role", "plum-field-31"), Optional.of("nobody")));
        }
    }

    @Test
    void aServerThatOnlyLetsReadIsReadAndEveryChangeIsRefusedWithWhatToDo() throws Exception {
        String name = String.valueOf(server.orElseThrow()).replaceAll(".*/", "");
        try (Store one = kiosk("one")) {
            add(one, "100");
            postgres().onlyReads(name, true);
            followUntilThere(one);

            assertEquals(Optional.of("100"), unit(one).row().find("asking"));
            assertEquals(new Edit.Outcome.NotKept(NotKeptException.Cause.READ_ONLY),
                    one.stock().edit(Edit.cell(unit(one), "asking", "90")));
            one.journal().add(DAY, Tally.NONE.plus(READ, 3));
            one.follow(SOON);
            one.follow(SOON);
            String told = String.join("\n", one.notices());
            assertTrue(told.contains("can only be read now") && told.contains("counts of visits wait"), told);

            postgres().onlyReads(name, false);
            followUntilThere(one);
            one.follow(SOON);
            assertEquals(List.of(), one.notices());
            assertEquals(3, one.journal().sum(DAY, DAY).counts().get(READ));
            assertInstanceOf(Edit.Outcome.Kept.class, one.stock().edit(Edit.cell(unit(one), "asking", "80")));
        }
    }

    /** The server ended the sessions, so the first look finds them gone. */
    private static void followUntilThere(Store kiosk) {
        for (int looks = 0; looks < 10; looks++) {
            kiosk.follow(SOON);
            if (kiosk.findTrouble().isEmpty()) {
                return;
            }
        }
        assertEquals(Optional.empty(), kiosk.findTrouble());
    }

    @Test
    void aServerWithoutTablesIsSaidWithWhatToDoAndUsedOnceItHasThem() throws Exception {
        server = Optional.of(postgres().database());
        try (Store one = kiosk("one")) {
            assertTrue(one.findTrouble().orElseThrow().contains("run fencerow store migrate"));
            assertThrows(NotKeptException.class, () -> one.stock().entries());
            Store.migrate(server.orElseThrow(), Optional.empty());
            one.follow(SOON);
            assertEquals(Optional.empty(), one.findTrouble());
            add(one, "1");
        }
    }

    @Test
    void noLoginIsInAnyErrorOrNotice() throws Exception {
        String secret = "orchard-lane-58";
        var wrong = Optional.of(postgres().server("there-is-none", "mister-secret", secret));
        try (Store one = Store.open(folder.resolve("one"), wrong, MAY)) {
            var e = assertThrows(NotKeptException.class, () -> one.stock().entries());
            var text = new StringWriter();
            e.printStackTrace(new PrintWriter(text, true));
            text.append(one.notices().toString()).append(wrong.toString());
            one.follow(SOON);
            text.append(one.notices().toString());
            var unusable = assertThrows(
                    UnusableStoreException.class, () -> Store.migrate(wrong.get(), Optional.empty()));
            unusable.printStackTrace(new PrintWriter(text, true));
            assertTrue(text.toString().contains("correct the login or the URL"), text.toString());
            assertFalse(text.toString().contains(secret), text.toString());
            assertFalse(text.toString().contains("mister-secret"), text.toString());
        }
    }
}
