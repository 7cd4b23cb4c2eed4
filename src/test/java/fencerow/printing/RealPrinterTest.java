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
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Prints to {@code ippeveprinter}, the reference IPP Everywhere printer of CUPS. Runs under {@code -Pprinters}, where
 * Debian's packages cups-ipp-utils, dbus and avahi-daemon are there.
 */
class RealPrinterTest {
    private static final Path SCRIPT = Path.of("src", "test", "printers", "start.sh").toAbsolutePath();
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
        if (!Boolean.getBoolean("fencerow.printers")) {
            abort("SKIPPED: no real printer was tried; run with -Pprinters");
        }
        int port;
        try (var socket = new ServerSocket(0)) {
            port = socket.getLocalPort();
        }
        List<String> command = Stream.concat(
                Stream.of(SCRIPT.toString(), Integer.toString(port), folder.toString()), Stream.of(options)).toList();
        printer = Optional.of(new ProcessBuilder(command)
                .redirectErrorStream(true)
                .redirectOutput(folder.resolve("printer.log").toFile())
                .start());
        var ipp = new IppPrinter(URI.create("ipp://localhost:" + port + "/ipp/print"));
        for (int i = 0; i < TRIES && ipp.findTrouble().equals(Optional.of(PrinterTrouble.OFFLINE)); i++) {
            assertTrue(printer.get().isAlive(), () -> "the printer ended: " + log());
            Thread.sleep(250);
        }
        return ipp;
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
        PrintOutcome outcome = ipp.print(pages, PageFormat.LETTER, 1);
        for (int i = 0; i < TRIES && outcome instanceof PrintOutcome.Queued queued; i++) {
            Thread.sleep(250);
            outcome = ipp.follow(queued);
        }
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
}
