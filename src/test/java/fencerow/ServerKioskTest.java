package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import fencerow.content.Content;
import fencerow.content.ShippedContent;
import fencerow.desk.Counter;
import fencerow.desk.Edit;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.Tally;
import fencerow.storage.Server;
import fencerow.storage.Store;
import fencerow.storage.TestServer;
import fencerow.terms.Money;
import fencerow.terms.UnitId;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.io.TempDir;

/** What kiosks show that share a server, and while it is away. */
@Timeout(90)
class ServerKioskTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T15:30:00Z"), ZoneOffset.UTC);
    private static final Map<String, String> LOGIN = Map.of(Server.USER, "postgres", Server.PASSWORD, "-");
    private static final UnitId UNIT = new UnitId("n-202");

    @TempDir
    Path folder;

    private String url = "";
    private final Content content = ShippedContent.get();

    private StockRoom open(String kiosk) {
        return StockRoom.open(folder.resolve(kiosk), url, Optional.empty(), LOGIN, CLOCK);
    }

    private StockRoom.Stocked look(StockRoom room, Path list) {
        return room.look(content, Optional.of(list));
    }

    private static Money asking(StockRoom.Stocked shown) {
        return shown.showroom().units().stream()
                .filter(unit -> unit.id().equals(UNIT)).findFirst().orElseThrow().price().asking();
    }

    private static void edit(StockRoom room, String asking) {
        StockBook book = room.store().orElseThrow().stock();
        StockEntry entry = book.find(UNIT).orElseThrow();
        assertInstanceOf(Edit.Outcome.Kept.class, book.edit(Edit.cell(entry, "asking", asking)));
    }

    private static void untilChanged(StockRoom room, String state) throws InterruptedException {
        while (room.state().equals(state)) {
            Thread.sleep(20);
        }
    }

    @Test
    void kiosksShowEachOthersChangesAndGoOnWithoutTheServerAlsoAfterARestart() throws Exception {
        assumeTrue(Boolean.getBoolean(TestServer.ASKED_FOR), TestServer.HOW);
        try (TestServer postgres = TestServer.start(folder.resolve("server"))) {
            Server server = postgres.database();
            url = TestServer.url(server);
            Store.migrate(server, Optional.empty());
            Path list = Files.copy(Path.of("kiosk-config/stock.csv"), folder.resolve("stock.csv"));
            StockRoom one = open("one");
            assertEquals(List.of(), look(one, list).problems());
            edit(one, "18001");

            // A kiosk that comes later does not undo what staff did, with the same list or with another.
            StockRoom other = open("other");
            StockRoom.Stocked shown = look(other, list);
            assertEquals(Money.ofDollars(18_001), asking(shown));
            assertEquals(List.of(), shown.problems());
            Path older = Files.writeString(
                    folder.resolve("older.csv"), Files.readString(list).replace("17900", "17777"));
            try (StockRoom third = open("third")) {
                assertTrue(look(third, older).problems().get(0).contains("was not taken into the stock"));
                assertTrue(look(third, older).problems().get(0).contains("was not taken into the stock"));
                assertEquals(Money.ofDollars(18_001), asking(look(third, older)));
                assertEquals(List.of(), look(other, list).problems());
            }
            String state = other.state();
            edit(one, "18002");
            untilChanged(other, state);
            assertEquals(Money.ofDollars(18_002), asking(look(other, list)));

            // Both have seen it before the server goes.
            while (!Files.exists(folder.resolve("other").resolve("server-copy.db"))) {
                Thread.sleep(20);
            }
            other.store().orElseThrow().follow(Duration.ofMillis(1));
            state = other.state();
            postgres.kill();
            untilChanged(other, state);
            shown = look(other, list);
            assertEquals(Money.ofDollars(18_002), asking(shown));
            assertTrue(shown.problems().get(0).contains("the server does not answer"), shown.problems().toString());
            other.close();
            other = open("other");
            for (int visit = 0; visit < 3; visit++) {
                other.ended(Tally.NONE.plus(Counter.of(Counter.Kind.VISIT, ""), 1));
            }
            shown = look(other, list);
            assertEquals(Money.ofDollars(18_002), asking(shown));
            state = other.state();

            postgres.startAgain();
            untilChanged(other, state);
            assertEquals(List.of(), look(other, list).problems());
            LocalDate today = LocalDate.now(CLOCK);
            while (other.store().orElseThrow().journal().sum(today, today).count(Counter.Kind.VISIT, "") < 3) {
                Thread.sleep(20);
            }
            // The owner's change of the list reaches the shared stock once.
            Path newer = Files.writeString(list, Files.readString(list).replace("17900", "18888"));
            assertEquals(Money.ofDollars(18_888), asking(look(other, newer)));
            edit(other, "18003");
            assertEquals(Money.ofDollars(18_003), asking(look(one, newer)));
            assertEquals(Money.ofDollars(18_003), asking(look(other, newer)));
            one.close();
            other.close();
        }
    }
}
