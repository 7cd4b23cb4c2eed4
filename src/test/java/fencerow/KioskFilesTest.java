package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.kit.TextSize;
import fencerow.printing.PrintOutcome;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files that the owner changes while the kiosk is on. */
class KioskFilesTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T15:30:00Z"), ZoneOffset.UTC);
    private static final String PRICE = "grille-guard-kit,,120,500";

    @TempDir
    private Path folder;

    private DemoShowroom demo = new DemoShowroom(Path.of(""));
    private KioskFiles files = new KioskFiles(new KioskWiring(CLOCK, "", config -> Path.of("")), demo.folders());

    @BeforeEach
    void open() {
        demo = DemoShowroom.in(folder);
        files = new KioskFiles(new KioskWiring(CLOCK, "", config -> demo.data()), demo.folders());
    }

    private static Premises premises(Opening opening) {
        return assertInstanceOf(Opening.Open.class, opening).premises();
    }

    /** What two looks find: the first sees that something has changed, the second that it lies still. */
    private Premises newer() {
        assertEquals(Optional.empty(), files.findNewer());
        return premises(files.findNewer().orElseThrow());
    }

    @Test
    void aChangedPriceIsReadOnceItLiesStill() {
        Premises before = premises(files.open());
        assertEquals(Optional.empty(), files.findNewer());

        demo.change("prices.csv", PRICE, "grille-guard-kit,,135,500");
        Premises after = newer();

        assertNotEquals(before.contentVersion(), after.contentVersion());
        assertNotEquals(before.showroom().catalogue(), after.showroom().catalogue());
        assertEquals(List.of(), after.problems());
        assertEquals(Optional.empty(), files.findNewer());
    }

    @Test
    void aBrokenChangeLeavesTheOldInForceAndSaysWhere() {
        Premises before = premises(files.open());

        demo.change("prices.csv", PRICE, "grille-guard-kit,,900,500");
        Premises broken = newer();
        assertSame(before.showroom(), broken.showroom());
        assertSame(before.search(), broken.search());
        assertEquals(1, broken.problems().size());
        assertTrue(broken.problems().get(0).startsWith("kiosk-config/prices.csv:2: "), broken.problems().toString());

        demo.change("prices.csv", "grille-guard-kit,,900,500", PRICE);
        Premises mended = newer();
        assertEquals(List.of(), mended.problems());
        assertEquals(before.contentVersion(), mended.contentVersion());
    }

    @Test
    void copiesOfTheHourGoOnCountingUnderNewerContent() throws Exception {
        demo.change("showroom.yaml", "copies: {visit: 4, hour: 40}", "copies: {visit: 1, hour: 1}");
        ListPrinter first = premises(files.open()).printer();
        Comfort comfort = new Comfort("en", TextSize.NORMAL, false, false);
        assertTrue(first.print(Visit.NEW, comfort, Set.of(ListPrinter.Part.LIST)).outcome().isDone());

        demo.change("prices.csv", PRICE, "grille-guard-kit,,135,500");
        ListPrinter second = newer().printer();
        second.visitEnded();
        assertInstanceOf(PrintOutcome.TooMany.class,
                second.print(Visit.NEW, comfort, Set.of(ListPrinter.Part.LIST)).outcome());
    }

    @Test
    void aChangedTemplateIsReadToo() {
        files.open();

        demo.change("paper/list.html", "<", "{{#open}}<");
        assertTrue(newer().problems().get(0).contains("list.html"));
    }

    @Test
    void aKioskWithNothingToShowOpensByItselfOnceItsFilesAreMended() {
        demo.change("prices.csv", PRICE, "grille-guard-kit,,900,500");
        assertInstanceOf(Opening.Closed.class, files.open());

        demo.change("prices.csv", "grille-guard-kit,,900,500", PRICE);
        assertEquals(List.of(), newer().problems());
    }
}
