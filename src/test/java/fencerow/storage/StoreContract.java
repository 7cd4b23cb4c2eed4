package fencerow.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.ComeBacks;
import fencerow.desk.Counter;
import fencerow.desk.Edit;
import fencerow.desk.Sale;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.StockRow;
import fencerow.desk.Tally;
import fencerow.desk.VisitBook;
import fencerow.terms.UnitId;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** What any database keeps: run on a file and on a server. */
abstract class StoreContract {
    static final Set<String> ALL = Set.of("model", "asking", "loader");

    static Clock at(String instant) {
        return Clock.fixed(Instant.parse(instant), ZoneOffset.UTC);
    }

    static final Clock MAY = at("2026-05-04T15:30:00Z");

    /** Opens the same data each time. */
    abstract Store open(Clock clock) throws UnusableStoreException;

    final Store open() throws UnusableStoreException {
        return open(MAY);
    }

    static StockRow row(String id, String asking) {
        return StockRow.of(new UnitId(id), Map.of("model", "nettle-19", "asking", asking));
    }

    static StockBook.TakenIn take(StockBook book, boolean replace, boolean keep, StockRow... rows) {
        return book.take(replace, intake -> {
            for (StockRow row : rows) {
                intake.put(row, ALL);
            }
            return keep;
        });
    }

    static List<String> ids(StockBook book) {
        return book.entries().stream().map(entry -> entry.row().id().value()).toList();
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
        try (Store store = open(at("2025-05-04T00:00:00Z"))) {
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
    void sealedVisitsAreFoundByTheirHandleUntilTheirDaysAreOver() throws UnusableStoreException {
        LocalDate day = LocalDate.parse("2026-05-04");
        var row = new ComeBacks.Row("c0ffee", day, "sealed");
        try (Store store = open()) {
            store.comeBacks().keep(row);
            assertEquals(0, store.comeBacks().forgetBefore(day));
        }
        try (Store store = open()) {
            assertEquals(Optional.of(row), store.comeBacks().findRow("c0ffee"));
            assertEquals(1, store.comeBacks().forgetBefore(day.plusDays(1)));
            assertEquals(Optional.empty(), store.comeBacks().findRow("c0ffee"));
        }
    }

    @Test
    void columnsAndNotesAreRemembered() throws UnusableStoreException {
        try (Store store = open()) {
            store.memory().rememberColumns(Map.of("Our price", "asking"));
            store.memory().remember("stock-file", "one");
            store.memory().remember("stock-file", "two");
            assertEquals("one", store.memory().settle("salt", "one"));
            assertEquals("one", store.memory().settle("salt", "two"));
        }
        try (Store store = open()) {
            assertEquals(Map.of("Our price", "asking"), store.memory().columns());
            assertEquals(Optional.of("two"), store.memory().find("stock-file"));
            assertEquals(Optional.of("one"), store.memory().find("salt"));
            assertEquals(Optional.empty(), store.memory().find("nothing"));
        }
    }
}
