package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.Folders;
import fencerow.kiosk.Canary;
import fencerow.kiosk.Fx;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.logging.Handler;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import java.util.logging.SimpleFormatter;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Nothing a shopper said is left when the visit has ended: not in anything that can be reached from the kiosk, not in
 * its data folder, not in its log (American Library Association, Library Privacy Checklist for Public Access Computers:
 * purge what a user leaves).
 */
class PrivacyFxTest {
    @TempDir
    private Path folder;

    private Premises premises() {
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
        Opening opening = new KioskWiring(clock, "", folder)
                .open(new Folders(Path.of("content"), Path.of("kiosk-config"), Optional.empty(), Optional.empty()));
        return ((Opening.Open) opening).premises();
    }

    @Test
    void nothingOfAVisitIsLeftInMemoryOnDiskOrInTheLog() throws IOException {
        List<String> log = new ArrayList<>();
        Handler listening = listening(log);
        Logger.getLogger("").addHandler(listening);
        try {
            Premises premises = premises();
            Shown shown = Fx.on(() -> Shown.of(premises, 1920, 1080));
            Canary canary = new Canary(shown);
            Fx.on(() -> {
                canary.visitEverything();
                assertTrue(canary.isReachable(), "the search finds what is there while it is there");
                shown.frame().failed(new IllegalStateException(Canary.WORD));
                canary.visitEverything();
                shown.frame().startOver(new Place.Attract());
                assertEquals(List.of(), canary.left(premises));
                shown.frame().leave();
                return true;
            });
        } finally {
            Logger.getLogger("").removeHandler(listening);
        }
        assertTrue(!log.isEmpty(), "the failure is in the log");
        assertEquals(List.of(), log.stream().filter(Canary::isIn).toList());
        try (Stream<Path> files = Files.walk(folder)) {
            assertEquals(List.of(), files.filter(Files::isRegularFile).filter(PrivacyFxTest::holdsIt).toList());
        }
    }

    private static boolean holdsIt(Path file) {
        try {
            return Canary.isIn(Files.readString(file, StandardCharsets.ISO_8859_1));
        } catch (IOException e) {
            throw new AssertionError(file + " cannot be read", e);
        }
    }

    private static Handler listening(List<String> log) {
        return new Handler() {
            @Override
            public void publish(LogRecord line) {
                log.add(new SimpleFormatter().format(line));
            }

            @Override
            public void flush() {}

            @Override
            public void close() {}
        };
    }
}
