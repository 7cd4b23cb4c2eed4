package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Premises;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Other programs put stock lists into a folder while the kiosk is on. */
class InboxTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-04T15:30:00Z"), ZoneOffset.UTC);
    private static final String HEAD = "id,model,condition,year,status,asking,loader\n";

    @TempDir
    private Path folder;

    private KioskFiles files = new KioskFiles(
            new KioskWiring(CLOCK, "", config -> Path.of("")), new DemoShowroom(Path.of("")).folders());

    @BeforeEach
    void open() throws IOException {
        DemoShowroom demo = DemoShowroom.in(folder);
        demo.change("showroom.yaml", "stock-inbox: \"\"", "stock-inbox: lists-from-outside");
        files = new KioskFiles(new KioskWiring(CLOCK, "", config -> demo.data()), demo.folders());
        files.open();
        files.findNewer();
    }

    private Path inbox() {
        return folder.resolve("data/lists-from-outside");
    }

    /** What a few looks find: one sees the file, the next that it lies still. */
    private Premises looked() {
        for (int i = 0; i < 3; i++) {
            Optional<Opening> newer = files.findNewer();
            if (newer.isPresent()) {
                return ((Opening.Open) newer.get()).premises();
            }
        }
        throw new AssertionError("nothing newer was found");
    }

    private List<String> names(String where) throws IOException {
        try (Stream<Path> all = Files.list(inbox().resolve(where))) {
            return all.map(file -> String.valueOf(file.getFileName())).sorted().toList();
        }
    }

    @Test
    void aListIsTakenInWholeOrRefusedWholeAndStaffReadWhere() throws IOException {
        Path outside = Files.writeString(folder.resolve("outside.csv"), HEAD);
        Files.createSymbolicLink(inbox().resolve("link.csv"), outside);
        Files.writeString(inbox().resolve("letter.txt"), "hello");
        Files.writeString(inbox().resolve(".hidden.csv"), HEAD);
        for (int i = 0; i < 3; i++) {
            assertEquals(Optional.empty(), files.findNewer(), "links and other files are left alone");
        }

        Files.writeString(inbox().resolve("from-the-office.csv"), HEAD + "x-1,nettle-19,new,2026,in-stock,9000,yes\n");
        Premises now = looked();
        assertTrue(now.showroom().units().stream().anyMatch(unit -> unit.id().value().equals("x-1")));
        assertEquals(56, now.showroom().units().size(), "what the list does not speak of stays");
        assertEquals(List.of("2026-05-04-153000-from-the-office.csv"), names("done"));
        assertFalse(Files.exists(inbox().resolve("from-the-office.csv")));

        Files.writeString(inbox().resolve("list.csv"), HEAD + "x-3,nettle-19,new,2026,in-stock,9000,yes\n"
                + "x-2,nettle-19,new,2026,in-stock,cheap,yes\n");
        now = looked();
        assertEquals(56, now.showroom().units().size());
        assertEquals(1, now.problems().size(), now.problems().toString());
        assertTrue(now.problems().get(0).contains("list.csv.txt: this stock list was not taken in"),
                now.problems().toString());
        assertEquals(List.of("2026-05-04-153000-list.csv", "2026-05-04-153000-list.csv.txt"), names("refused"));
        Path why = inbox().resolve("refused/2026-05-04-153000-list.csv.txt");
        String text = Files.readString(why);
        assertTrue(text.contains("list.csv:3: column [asking]: [cheap] is no whole number"), text);

        Files.delete(why);
        assertEquals(List.of(), looked().problems(), "once it is taken away, nobody is told any more");
        assertTrue(Files.exists(outside) && Files.exists(inbox().resolve("letter.txt")));
    }
}
