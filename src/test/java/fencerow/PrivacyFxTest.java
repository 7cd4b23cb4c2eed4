package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Canary;
import fencerow.kiosk.Fx;
import fencerow.kiosk.Shown;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.storage.Store;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
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
    /** What of a visit may outlast it, sealed and on the shopper's wish; and the salt of the database's codes. */
    private static final Set<String> EXEMPT = Set.of("come_back", "memory");

    @TempDir
    private Path folder;

    @Test
    void nothingOfAVisitIsLeftInMemoryOnDiskOrInTheLogButWhatAShopperHadSealed() throws IOException, SQLException {
        DemoShowroom demo = DemoShowroom.in(folder);
        demo.change("showroom.yaml", "come-back: {codes: off, days: 60}", "come-back: {codes: on, days: 60}");
        Clock clock = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
        var wiring = new KioskWiring(clock, "", config -> demo.data());
        Premises premises = ((Opening.Open) wiring.open(demo.folders())).premises();
        Map<String, String> before = tables(demo.data());
        List<String> log = new ArrayList<>();
        Handler listening = listening(log);
        Logger.getLogger("").addHandler(listening);
        try {
            Shown shown = Fx.on(() -> Shown.of(premises, 1920, 1080));
            Canary canary = new Canary(shown);
            Fx.on(() -> {
                canary.visitEverything();
                assertTrue(canary.isReachable(), "the search finds what is there while it is there");
                shown.frame().failed(new IllegalStateException(Canary.WORD));
                canary.visitEverything();
                shown.touch(shown.frame().say("print.code.make"));
                assertTrue(shown.frame().visit().get().code().isPresent());
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
        Map<String, String> after = tables(demo.data());
        assertNotEquals(before.get("come_back"), after.get("come_back"), "the visit is kept");
        before.keySet().removeAll(EXEMPT);
        after.keySet().removeAll(EXEMPT);
        assertEquals(before, after);
        wiring.close();
        try (Stream<Path> files = Files.walk(demo.data())) {
            assertEquals(List.of(), files.filter(Files::isRegularFile).filter(PrivacyFxTest::holdsIt).toList());
        }
    }

    /** The rows of each table of ours as one text. */
    private static Map<String, String> tables(Path data) throws SQLException {
        Map<String, String> tables = new TreeMap<>();
        try (Connection connection = DriverManager.getConnection("jdbc:sqlite:" + data.resolve(Store.FILE));
                ResultSet names = connection.getMetaData().getTables(null, null, "%", new String[] {"TABLE"})) {
            while (names.next()) {
                String table = names.getString("TABLE_NAME");
                var rows = new StringBuilder();
                try (Statement statement = connection.createStatement();
                        ResultSet found = statement.executeQuery("select * from " + table)) {
                    while (found.next()) {
                        for (int i = 1; i <= found.getMetaData().getColumnCount(); i++) {
                            rows.append(found.getString(i)).append('|');
                        }
                    }
                }
                tables.put(table, rows.toString());
            }
        }
        return tables;
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
