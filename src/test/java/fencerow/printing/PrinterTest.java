package fencerow.printing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.hp.jipp.encoding.Tag;
import com.hp.jipp.model.JobState;
import com.hp.jipp.model.Status;
import com.hp.jipp.model.Types;
import fencerow.printing.AnsweringPrinter.State;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Printers that work, and all the ways in which they do not; states and reasons by RFC 8011 and PWG 5100.9. */
class PrinterTest {
    private static final Clock NOON = Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC);
    private static final Printout PAGES =
            new Printout("%PDF-1.7 invented".getBytes(StandardCharsets.US_ASCII), 2, List.of());

    @TempDir
    private Path folder;

    static Stream<Arguments> troubles() {
        State idle = State.IDLE;
        return Stream.of(
                Arguments.of(idle.stopped("media-empty-error"), PrinterTrouble.OUT_OF_PAPER),
                Arguments.of(idle.stopped("media-needed"), PrinterTrouble.OUT_OF_PAPER),
                Arguments.of(idle.says("media-empty-error"), PrinterTrouble.OUT_OF_PAPER),
                Arguments.of(idle.stopped("toner-low-warning", "media-jam-error"), PrinterTrouble.JAM),
                Arguments.of(idle.stopped("cover-open-error", "media-empty-error"), PrinterTrouble.COVER_OPEN),
                Arguments.of(idle.stopped("door-open"), PrinterTrouble.COVER_OPEN),
                Arguments.of(idle.stopped("input-tray-missing-error"), PrinterTrouble.TRAY_MISSING),
                Arguments.of(idle.stopped("output-area-full-error"), PrinterTrouble.OUTPUT_FULL),
                Arguments.of(idle.stopped("toner-empty-error"), PrinterTrouble.OUT_OF_INK),
                Arguments.of(idle.stopped("paused"), PrinterTrouble.PAUSED),
                Arguments.of(idle.stopped("vendor-has-a-word-of-its-own"), PrinterTrouble.TROUBLE),
                Arguments.of(idle.stopped("none"), PrinterTrouble.TROUBLE),
                Arguments.of(idle.stopped("shutdown"), PrinterTrouble.OFFLINE),
                Arguments.of(idle.closed(), PrinterTrouble.NOT_ACCEPTING),
                Arguments.of(idle.reading("image/pwg-raster", "image/urf"), PrinterTrouble.WRONG_FORMAT));
    }

    @ParameterizedTest
    @MethodSource("troubles")
    void aPrinterThatCannotPrintNowIsToldInWordsAndGetsNoJob(State state, PrinterTrouble trouble) throws IOException {
        try (var printer = new AnsweringPrinter(state)) {
            Printer ipp = new IppPrinter(printer.address());
            assertEquals(Optional.of(trouble), ipp.findTrouble());
            PrintOutcome outcome = ipp.print(PAGES, PageFormat.LETTER, 1);
            assertEquals(new PrintOutcome.Failed(trouble), outcome);
            assertEquals(0, printer.document().length, "a job waits there for the next shopper to find");
            assertFalse(outcome.says(Shipped.ENGLISH).isBlank());
            assertFalse(outcome.todo(Shipped.ENGLISH).isBlank());
        }
    }

    @Test
    void aPrinterThatOnlyRunsLowPrintsAndSaysSo() throws IOException {
        try (var printer = new AnsweringPrinter(State.IDLE.says("toner-low-report", "media-low-warning"))) {
            Printer ipp = new IppPrinter(printer.address());
            assertEquals(Optional.of(PrinterTrouble.LOW_ON_PAPER), ipp.findTrouble());
            assertEquals(new PrintOutcome.Printed(), ipp.print(PAGES, PageFormat.LETTER, 1));
        }
    }

    @Test
    void thePagesArriveAsTheyAreWithPaperAndCopies() throws IOException {
        try (var printer = new AnsweringPrinter(State.IDLE)) {
            new IppPrinter(printer.address()).print(PAGES, new PageFormat(PageFormat.Size.A4, false), 2);
            assertArrayEquals(PAGES.pdf(), printer.document());
            assertEquals("iso_a4_210x297mm", printer.job().getString(Tag.jobAttributes, Types.media));
            assertEquals(2, printer.job().getValue(Tag.jobAttributes, Types.copies));
            assertEquals("application/pdf", printer.job().getString(Tag.operationAttributes, Types.documentFormat));
        }
    }

    @Test
    void aJobAtWorkIsFollowedAndTellsWhatThePrinterWaitsFor() throws IOException {
        State waiting = State.IDLE.withJob(JobState.processing).says("media-empty-warning");
        try (var printer = new AnsweringPrinter(waiting)) {
            Printer ipp = new IppPrinter(printer.address());
            PrintOutcome outcome = ipp.print(PAGES, PageFormat.LETTER, 1);
            assertEquals(new PrintOutcome.Queued(7, Optional.of(PrinterTrouble.OUT_OF_PAPER)), outcome);
            assertEquals("out-of-paper", outcome.id());
            assertEquals(new PrintOutcome.Failed(PrinterTrouble.CANCELLED),
                    ipp.cancel((PrintOutcome.Queued) outcome));
            assertEquals(1, printer.cancelled());
        }
    }

    @Test
    void aJobTurnedAwayOrStoppedIsNoSuccess() throws IOException {
        try (var refusing = new AnsweringPrinter(State.IDLE.refusing(Status.clientErrorNotAuthorized));
                var busy = new AnsweringPrinter(State.IDLE.refusing(Status.serverErrorNotAcceptingJobs));
                var aborting = new AnsweringPrinter(State.IDLE.withJob(JobState.aborted));
                var stopping = new AnsweringPrinter(State.IDLE.withJob(JobState.canceled))) {
            assertEquals(new PrintOutcome.Failed(PrinterTrouble.REFUSED), print(refusing));
            assertEquals(new PrintOutcome.Failed(PrinterTrouble.NOT_ACCEPTING), print(busy));
            assertEquals(new PrintOutcome.Failed(PrinterTrouble.REFUSED), print(aborting));
            assertEquals(new PrintOutcome.Failed(PrinterTrouble.CANCELLED), print(stopping));
        }
    }

    @Test
    void aJobThatAServerStoppedWhileItsPrinterIsWellNeedsHelp() throws IOException {
        try (var printer = new AnsweringPrinter(State.IDLE.withJob(JobState.processingStopped))) {
            var queued = assertInstanceOf(PrintOutcome.Queued.class, print(printer));
            assertEquals(Optional.of(PrinterTrouble.TROUBLE), queued.waitsFor());
        }
    }

    private static PrintOutcome print(AnsweringPrinter printer) {
        return new IppPrinter(printer.address()).print(PAGES, PageFormat.LETTER, 1);
    }

    @Test
    void aPrinterThatIsOffOrSilentOrElsewhereIsOfflineOrNotFound() throws IOException {
        int free;
        try (var socket = new ServerSocket(0)) {
            free = socket.getLocalPort();
        }
        assertEquals(Optional.of(PrinterTrouble.OFFLINE),
                new IppPrinter(URI.create("ipp://localhost:" + free + "/ipp/print")).findTrouble());
        try (var silent = new AnsweringPrinter(State.IDLE.slow(3000));
                var there = new AnsweringPrinter(State.IDLE)) {
            assertEquals(Optional.of(PrinterTrouble.OFFLINE), new IppPrinter(silent.address()).findTrouble());
            assertEquals(Optional.of(PrinterTrouble.NOT_FOUND),
                    new IppPrinter(there.address().resolve("/other")).findTrouble());
        }
    }

    @Test
    void whereThereIsNoPrinterPagesAreSavedUnderTheTime() throws IOException {
        Path saved = folder.resolve("saved");
        Printer printer = Printer.of(Optional.empty(), saved, NOON);
        assertEquals(new PrintOutcome.Saved(saved.resolve("list-20261125-120000.pdf")),
                printer.print(PAGES, PageFormat.LETTER, 1));
        assertEquals(new PrintOutcome.Saved(saved.resolve("list-20261125-120000-2.pdf")),
                printer.print(PAGES, PageFormat.LETTER, 1));
        assertArrayEquals(PAGES.pdf(), Files.readAllBytes(saved.resolve("list-20261125-120000.pdf")));
    }

    @Test
    void whatACrashLeftHalfWrittenIsSweptAway() throws IOException {
        Path half = Files.writeString(folder.resolve("list-20261125-1159.part"), "half");
        Printer.of(Optional.empty(), folder, NOON).print(PAGES, PageFormat.LETTER, 1);
        assertFalse(Files.exists(half));
        try (Stream<Path> files = Files.list(folder)) {
            assertEquals(1, files.count());
        }
    }

    @Test
    void tidyingUpDeletesWhatIsTooOldAndNothingThatIsBeingWritten() throws IOException {
        Path old = written("list-20261123-110000.pdf", Duration.ofHours(25));
        Path fresh = written("list-20261124-130000.pdf", Duration.ofHours(23));
        Path half = written("list-20261125-1158.part", Duration.ofSeconds(61));
        Path writing = written("list-20261125-1159.part", Duration.ofSeconds(1));
        Printer.of(Optional.empty(), folder, NOON).tidyUp();
        assertFalse(Files.exists(old) || Files.exists(half));
        assertTrue(Files.exists(fresh) && Files.exists(writing));
        Printer.of(Optional.empty(), folder.resolve("not-there"), NOON).tidyUp();
        assertFalse(Files.exists(folder.resolve("not-there")));
    }

    @Test
    void aListThatNobodyCameForWithinADayIsDeletedAndNothingElseIs() throws IOException {
        Path old = written("list-20261123-110000.pdf", Duration.ofHours(25));
        Path fresh = written("list-20261124-130000.pdf", Duration.ofHours(23));
        Path other = written("prices.pdf", Duration.ofDays(900));
        Printer.of(Optional.empty(), folder, NOON).print(PAGES, PageFormat.LETTER, 1);
        assertFalse(Files.exists(old));
        assertTrue(Files.exists(fresh) && Files.exists(other));
    }

    private Path written(String name, Duration ago) throws IOException {
        Path file = Files.writeString(folder.resolve(name), "a list");
        return Files.setLastModifiedTime(file, FileTime.from(NOON.instant().minus(ago)));
    }

    @Test
    void aFolderThatCannotBeWrittenIsToldInWords() throws IOException {
        Path file = Files.writeString(folder.resolve("file"), "no folder");
        PrintOutcome outcome = Printer.of(Optional.empty(), file, NOON).print(PAGES, PageFormat.LETTER, 1);
        assertEquals(new PrintOutcome.NotSaved(), outcome);
        assertFalse(outcome.says(Shipped.ENGLISH).isBlank());
    }

    @Test
    void aQueueThatThePlatformDoesNotKnowIsNotFound() {
        Printer printer = Printer.of(Optional.of("no queue of this name"), folder, NOON);
        assertEquals(new PrintOutcome.Failed(PrinterTrouble.NOT_FOUND), printer.print(PAGES, PageFormat.LETTER, 1));
    }

    @Test
    void everyOutcomeHasWordsForWhatIsSoAndWhatToDo() {
        for (PrinterTrouble trouble : PrinterTrouble.values()) {
            var failed = new PrintOutcome.Failed(trouble);
            assertFalse(failed.says(Shipped.ENGLISH).isBlank());
            assertFalse(failed.todo(Shipped.ENGLISH).isBlank());
        }
        for (PrintOutcome outcome : List.of(new PrintOutcome.Printed(), new PrintOutcome.HandedOver(),
                new PrintOutcome.Saved(folder), new PrintOutcome.Queued(1, Optional.empty()),
                new PrintOutcome.TooMany(Optional.empty()))) {
            assertFalse(outcome.says(Shipped.ENGLISH).isBlank());
            assertFalse(outcome.todo(Shipped.ENGLISH).isBlank());
        }
        assertTrue(new PrintOutcome.TooMany(Optional.of(Duration.ofSeconds(61))).todo(Shipped.ENGLISH)
                .contains("2 minutes"));
    }

    @Test
    void copiesAreLimitedByVisitAndByHour() {
        Instant noon = NOON.instant();
        Copies copies = Copies.none(2, 3).with(noon).with(noon.plusSeconds(60));
        PrintOutcome.TooMany visit = copies.findRefusal(noon.plusSeconds(61)).orElseThrow();
        assertEquals(Optional.empty(), visit.waiting());
        Copies next = copies.newVisit();
        assertEquals(Optional.empty(), next.findRefusal(noon.plusSeconds(120)));
        Copies full = next.with(noon.plusSeconds(120));
        PrintOutcome.TooMany hour = full.findRefusal(noon.plusSeconds(600)).orElseThrow();
        assertEquals(Optional.of(Duration.ofMinutes(50)), hour.waiting());
        assertEquals(Optional.empty(), full.findRefusal(noon.plus(Duration.ofHours(1))));
    }

    @Test
    void anAddressIsSpokenToAndANameIsLookedUp() {
        assertInstanceOf(IppPrinter.class, Printer.of(Optional.of("IPP://printer.example/ipp/print"), folder, NOON));
        assertInstanceOf(QueuePrinter.class, Printer.of(Optional.of("Office"), folder, NOON));
        assertInstanceOf(FolderPrinter.class, Printer.of(Optional.empty(), folder, NOON));
        assertEquals(URI.create("http://printer.example:631/ipp/print"),
                IppConnection.web(URI.create("ipp://printer.example/ipp/print")));
        assertEquals(URI.create("https://printer.example:8443/"),
                IppConnection.web(URI.create("ipps://printer.example:8443")));
    }
}
