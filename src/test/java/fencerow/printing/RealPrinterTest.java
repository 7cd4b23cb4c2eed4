package fencerow.printing;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.abort;

import java.io.IOException;
import java.net.ServerSocket;
import java.net.URI;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Prints to {@code ippeveprinter}, the reference IPP Everywhere printer of CUPS, and to a CUPS server's queue. Runs
 * under {@code -Pprinters}, where the scripts beside it find what they name.
 */
class RealPrinterTest {
    private static final Path SCRIPTS = Path.of("src", "test", "printers").toAbsolutePath();
    private static final int TRIES = 120;

    @TempDir
    private Path folder;

    private Optional<Process> printer = Optional.empty();

    @AfterEach
    void stop() throws InterruptedException {
        if (printer.isPresent()) {
            printer.get().destroy();
            assertTrue(printer.get().waitFor(10, TimeUnit.SECONDS), "the printer does not stop");
        }
    }

    private IppPrinter start(String... options) throws Exception {
        return run("start.sh", "/ipp/print", options);
    }

    private IppPrinter run(String script, String path, String... options) throws Exception {
        if (!Boolean.getBoolean("fencerow.printers")) {
            abort("SKIPPED: no real printer was tried; run with -Pprinters");
        }
        int port;
        try (var socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
        List<String> command = Stream.concat(
                Stream.of(SCRIPTS.resolve(script).toString(), Integer.toString(port), folder.toString()),
                Stream.of(options)).toList();
        printer = Optional.of(new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("printer.log").toFile())
                .start());
        var ipp = new IppPrinter(URI.create("ipp://localhost:" + port + path));
        Set<Optional<PrinterTrouble>> notYet = Set.of(
                Optional.of(PrinterTrouble.OFFLINE), Optional.of(PrinterTrouble.NOT_FOUND));
        for (int i = 0; i < TRIES && notYet.contains(ipp.findTrouble()); i++) {
            assertTrue(printer.get().isAlive(), () -> "the printer ended: " + log());
            Thread.sleep(250);
        }
        return ipp;
    }

    /** How the job ended, or stands when it has been looked at often enough. */
    private static PrintOutcome end(IppPrinter ipp, PrintOutcome begun) throws InterruptedException {
        PrintOutcome outcome = begun;
        for (int i = 0; i < TRIES && outcome instanceof PrintOutcome.Queued queued; i++) {
            Thread.sleep(250);
            outcome = ipp.follow(queued);
        }
        return outcome;
    }

    private String log() {
        try {
            return Files.readString(folder.resolve("printer.log"));
        } catch (IOException e) {
            return e.toString();
        }
    }

    private static Printout pages() {
        var handouts = new RandomHandouts(1, Shipped.ENGLISH);
        return Paper.of(Shipped.PAPER, 14, 4, warning -> {
            throw new AssertionError(warning);
        }).print(handouts.next(), handouts.phrases(), PageFormat.LETTER, List.of(Sheet.LIST, Sheet.COMPARISON));
    }

    @Test
    void aListReachesThePrinterWholeAndIsPrinted() throws Exception {
        IppPrinter ipp = start();
        assertEquals(Optional.empty(), ipp.findTrouble());
        Printout pages = pages();
        PrintOutcome outcome = end(ipp, ipp.print(pages, PageFormat.LETTER, 1));
        assertEquals(new PrintOutcome.Printed(), outcome, log());
        try (Stream<Path> files = Files.list(folder)) {
            Path kept = files.filter(file -> file.toString().endsWith(".pdf")).findFirst().orElseThrow();
            assertArrayEquals(pages.pdf(), Files.readAllBytes(kept));
        }
    }

    @Test
    void aJobThatWaitsForPaperSaysSoAndCanBeTakenBack() throws Exception {
        Path command = Files.writeString(folder.resolve("wait.sh"),
                "#!/bin/sh\necho 'STATE: +media-empty' >&2\nsleep 20\n");
        assertTrue(command.toFile().setExecutable(true));
        IppPrinter ipp = start("-c", command.toString());
        PrintOutcome outcome = ipp.print(pages(), PageFormat.LETTER, 1);
        for (int i = 0; i < TRIES && !outcome.id().equals("out-of-paper"); i++) {
            Thread.sleep(250);
            outcome = ipp.follow(assertInstanceOf(PrintOutcome.Queued.class, outcome, log()));
        }
        assertEquals("out-of-paper", outcome.id(), log());
        PrintOutcome taken = ipp.cancel((PrintOutcome.Queued) outcome);
        assertEquals(new PrintOutcome.Failed(PrinterTrouble.CANCELLED), taken, log());
    }

    @Test
    void aPrinterThatReadsNoPdfIsToldApart() throws Exception {
        IppPrinter ipp = start("-f", "image/pwg-raster");
        assertEquals(new PrintOutcome.Failed(PrinterTrouble.WRONG_FORMAT),
                ipp.print(pages(), PageFormat.LETTER, 1), log());
    }

    @Test
    void aServersQueuePrintsTheListAndOneThatDoesNotExistIsToldApart() throws Exception {
        IppPrinter queue = run("cups.sh", "/printers/pdf");
        assertEquals(Optional.empty(), queue.findTrouble(), log());
        PrintOutcome outcome = end(queue, queue.print(pages(), PageFormat.LETTER, 1));
        assertEquals(new PrintOutcome.Printed(), outcome, log());
        var other = new IppPrinter(URI.create(queue.address().toString().replace("/pdf", "/none")));
        assertEquals(Optional.of(PrinterTrouble.NOT_FOUND), other.findTrouble(), log());
    }

    @Test
    void aServersQueueThatIsStoppedTakesNoList() throws Exception {
        IppPrinter queue = run("cups.sh", "/printers/pdf");
        String server = "localhost:" + queue.address().getPort();
        Process stopping = new ProcessBuilder("cupsdisable", "-h", server, "pdf").inheritIO().start();
        assertEquals(0, stopping.waitFor());
        assertEquals(new PrintOutcome.Failed(PrinterTrouble.PAUSED),
                queue.print(pages(), PageFormat.LETTER, 1), log());
    }
}
