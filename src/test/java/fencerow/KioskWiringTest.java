package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.Folders;
import fencerow.desk.Counter;
import fencerow.desk.Edit;
import fencerow.desk.NotKeptException;
import fencerow.desk.Sale;
import fencerow.desk.StockBook;
import fencerow.desk.StockEntry;
import fencerow.desk.Tally;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.kit.TextSize;
import fencerow.printing.PrintOutcome;
import fencerow.search.Query;
import fencerow.storage.Store;
import fencerow.terms.Money;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import fencerow.visit.Visit;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What a kiosk starts with, from good and from broken files. */
class KioskWiringTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T15:30:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Folders folders = Folders.below(Path.of(""));

    @BeforeEach
    void copyTheConfiguration() throws IOException {
        try (Stream<Path> all = Files.walk(folders.config())) {
            for (Path file : all.toList()) {
                Files.copy(file, folder.resolve(file.toString()));
            }
        }
        folders = new Folders(
                folders.content(), folder.resolve("kiosk-config"), Optional.empty(), Optional.empty());
        spoil("showroom.yaml", "save-folder: saved-lists", "save-folder: " + folder.resolve("lists"));
    }

    private void spoil(String file, String from, String to) throws IOException {
        Path path = folders.config().resolve(file);
        String text = Files.readString(path);
        assertTrue(text.contains(from), () -> file + " has no longer [" + from + "]");
        Files.writeString(path, text.replace(from, to));
    }

    private Opening open(Folders from) {
        return new KioskWiring(CLOCK, "", config -> folder.resolve("data")).open(from);
    }

    private Premises premises() {
        return assertInstanceOf(Opening.Open.class, open(folders)).premises();
    }

    @Test
    void goodContentIsShownSearchedAndPrinted() throws Exception {
        Premises premises = premises();

        assertEquals(List.of(), premises.problems());
        assertEquals("quick-attach", premises.search().find(Query.of("quick attach", "en")).hits().get(0).id());
        ListPrinter.Printed printed = premises.printer().print(
                Visit.NEW, new Comfort("en", TextSize.NORMAL, false, false), Set.of(ListPrinter.Part.LIST));
        var saved = assertInstanceOf(PrintOutcome.Saved.class, printed.outcome());
        assertEquals(2, printed.pages());
        byte[] pdf = Files.readAllBytes(saved.file());
        assertEquals(folder.resolve("lists"), saved.file().getParent());
        assertEquals("%PDF-", new String(pdf, 0, 5, StandardCharsets.US_ASCII));
    }

    @Test
    void aVisitPrintsAsOftenAsTheShowroomAllowsAndTheNextOneStartsAnew() throws Exception {
        spoil("showroom.yaml", "copies: {visit: 4, hour: 40}", "copies: {visit: 1, hour: 2}");
        ListPrinter printer = premises().printer();
        var comfort = new Comfort("en", TextSize.NORMAL, false, false);
        Set<ListPrinter.Part> list = Set.of(ListPrinter.Part.LIST);

        assertTrue(printer.print(Visit.NEW, comfort, list).outcome().isDone());
        assertEquals(new PrintOutcome.TooMany(Optional.empty()), printer.save(Visit.NEW, comfort, list).outcome());
        printer.visitEnded();
        assertTrue(printer.print(Visit.NEW, comfort, list).outcome().isDone());
        printer.visitEnded();
        var tooMany = assertInstanceOf(
                PrintOutcome.TooMany.class, printer.print(Visit.NEW, comfort, list).outcome());
        assertEquals(Optional.of(Duration.ofHours(1)), tooMany.waiting());
        assertTrue(printer.testPage(comfort).outcome().isDone());
    }

    @Test
    void brokenContentLeavesTheLastGoodOneOnScreenAndTellsStaff() throws IOException {
        Premises before = premises();
        spoil("prices.csv", "grille-guard-kit,,120,500", "grille-guard-kit,,900,500");

        Premises after = premises();

        assertEquals(before.contentVersion(), after.contentVersion());
        assertEquals(before.showroom().units(), after.showroom().units());
        assertEquals(1, after.problems().size());
        assertTrue(after.problems().get(0).startsWith("kiosk-config/prices.csv:2: "), after.problems().toString());
    }

    @Test
    void aBrokenTemplateCountsAsBrokenContent() throws IOException {
        Premises before = premises();
        spoil("paper/list.html", "<", "{{#open}}<");

        Premises after = premises();

        assertEquals(before.contentVersion(), after.contentVersion());
        assertTrue(after.problems().get(0).contains("list.html"), after.problems().toString());
    }

    @Test
    void brokenContentAtAFirstStartShowsWhatIsWrongAndWhere() throws IOException {
        spoil("prices.csv", "grille-guard-kit,,120,500", "grille-guard-kit,,900,500");

        List<String> problems = assertInstanceOf(Opening.Closed.class, open(folders)).problems();

        assertTrue(problems.get(0).startsWith("kiosk-config/prices.csv:2: "), problems.toString());
    }

    @Test
    void visitsStartInTheLanguageAskedFor() {
        Folders pseudo = new Folders(folders.content(), folders.config(), Optional.empty(), Optional.of("qps"));
        Folders unknown = new Folders(folders.content(), folders.config(), Optional.empty(), Optional.of("tlh"));

        Premises premises = assertInstanceOf(Opening.Open.class, open(pseudo)).premises();

        assertEquals("qps", premises.settings().languages().get(0));
        List<String> problems = assertInstanceOf(Opening.Closed.class, open(unknown)).problems();
        assertTrue(problems.get(0).contains("[tlh] is not offered; use one of en"), problems.toString());
    }

    private static List<String> ids(Premises premises) {
        return premises.showroom().units().stream().map(unit -> unit.id().value()).toList();
    }

    @Test
    void stockIsTakenInOnceAndAgainWhenItsFileChangesAndSoldUnitsAreNotShown() throws Exception {
        var wiring = new KioskWiring(CLOCK, "", config -> folder.resolve("data"));
        List<String> all = ids(assertInstanceOf(Opening.Open.class, wiring.open(folders)).premises());
        assertEquals(Optional.empty(), wiring.findRestocked());
        try (Store store = Store.open(folder.resolve("data"), CLOCK)) {
            StockEntry unit = store.stock().find(new UnitId("n-201")).orElseThrow();
            store.stock().edit(Edit.sale(unit, new Sale.Sold(LocalDate.parse("2026-05-04"))));
        }

        assertEquals(all.subList(1, all.size()), ids(wiring.findRestocked().orElseThrow()));
        assertEquals(Optional.empty(), wiring.findRestocked());

        spoil("stock.csv", "n-202,nettle-24,new,2026,1,in-stock,,17900", "n-202,nettle-24,new,2026,1,in-stock,,18888");
        Premises later = assertInstanceOf(Opening.Open.class, wiring.read(folders)).premises();
        assertEquals(all.subList(1, all.size()), ids(later));
        assertEquals(Money.ofDollars(18_888), later.showroom().units().get(0).price().asking());
        wiring.close();
    }

    /** The mean of a beta-binomial model, worked by hand: 20 answers' worth of the content's chance, and 40 of 40. */
    @Test
    void whatShoppersAnsweredInTheLastYearMovesTheQuizsChances() throws Exception {
        var wiring = new KioskWiring(CLOCK, "", config -> folder.resolve("data"));
        double before = wrong(assertInstanceOf(Opening.Open.class, wiring.open(folders)).premises());
        wiring.close();
        try (Store store = Store.open(folder.resolve("data"), CLOCK)) {
            Counter wrong = Counter.of(Counter.Kind.BELIEF_WRONG, "quick-attach");
            store.journal().add(LocalDate.parse("2026-03-01"), Tally.NONE.plus(wrong, 40));
            store.journal().add(LocalDate.parse("2024-03-01"), Tally.NONE.plus(wrong, 500));
        }

        assertEquals((20 * before + 40) / 60, wrong(premises()), 1e-12);
    }

    private static double wrong(Premises premises) {
        return premises.showroom().quiz().find(new QuestionId("quick-attach")).orElseThrow().wrong();
    }

    @Test
    void aKioskWithoutADatabaseShowsTheStockListAndTellsStaff() throws IOException {
        Files.writeString(folder.resolve("data"), "a file where the folder should be");
        Premises premises = premises();
        assertEquals("n-201", ids(premises).get(0));
        assertTrue(premises.problems().get(0).contains("changes of the stock cannot be kept"),
                premises.problems().toString());
    }

    @Test
    void aDatabaseThatCannotBeWrittenIsReadWithItsSalesAndStaffAreTold() throws Exception {
        var wiring = new KioskWiring(CLOCK, "", config -> folder.resolve("data"));
        List<String> all = ids(assertInstanceOf(Opening.Open.class, wiring.open(folders)).premises());
        try (Store other = Store.open(folder.resolve("data"), CLOCK)) {
            StockEntry unit = other.stock().find(new UnitId("n-201")).orElseThrow();
            other.stock().edit(Edit.sale(unit, new Sale.Sold(LocalDate.parse("2026-05-04"))));
            // What nobody can write, whatever their rights: a folder in the place of a file. The sale is still in the
            // write-ahead log alone, as after a power cut.
            Files.delete(folder.resolve("data").resolve("opening.lock"));
            Files.createDirectory(folder.resolve("data").resolve("opening.lock"));
            spoil("stock.csv", "n-202,nettle-24,new,2026,1,in-stock,,17900",
                    "n-202,nettle-24,new,2026,1,in-stock,,18888");
            var second = new KioskWiring(CLOCK, "", config -> folder.resolve("data"));
            Premises premises = assertInstanceOf(Opening.Open.class, second.open(folders)).premises();

            assertEquals(all.subList(1, all.size()), ids(premises));
            assertEquals(Money.ofDollars(17_900), premises.showroom().units().get(0).price().asking());
            assertTrue(premises.problems().get(0).contains("the stock is shown as it was kept last"),
                    premises.problems().toString());
            assertTrue(premises.problems().get(1).contains("the stock list was not taken in"),
                    premises.problems().toString());
            StockBook book = premises.desk().orElseThrow().book();
            StockEntry entry = book.find(new UnitId("n-202")).orElseThrow();
            assertEquals(new Edit.Outcome.NotKept(NotKeptException.Cause.READ_ONLY),
                    book.edit(Edit.cell(entry, "asking", "1")));
            assertEquals(Optional.empty(), second.findRestocked());
            second.close();
        }
        wiring.close();
    }
}
