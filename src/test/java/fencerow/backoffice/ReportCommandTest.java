package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Tally;
import fencerow.storage.Store;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.LocalDate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the command line tells of the visits of some days; the counts are made up. */
class ReportCommandTest {
    @TempDir
    private Path folder;

    @BeforeEach
    void count() throws Exception {
        try (Store store = Store.open(data(), Run.CLOCK)) {
            store.journal().add(LocalDate.parse("2026-05-02"), Tally.NONE
                    .plus(Counter.of(Kind.VISIT, ""), 12)
                    .plus(Counter.of(Kind.BELIEF_WRONG, "quick-attach"), 6)
                    .plus(Counter.of(Kind.BELIEF_RIGHT, "quick-attach"), 2)
                    .plus(Counter.of(Kind.NOT_FOUND, "=sprayer"), 5)
                    .plus(Counter.of(Kind.NOT_FOUND, "helicopter"), 2));
            store.journal().add(LocalDate.parse("2026-04-30"), Tally.NONE.plus(Counter.of(Kind.VISIT, ""), 50));
        }
    }

    private Path data() {
        return folder.resolve("data");
    }

    private Run run(String... arguments) {
        return Run.in(data(), arguments);
    }

    @Test
    void thisMonthIsToldWithItsBounds() {
        Run run = run("report").fine();
        assertTrue(run.out().contains("12 visits"), run.out());
        assertTrue(run.out().contains("6 of 8 wrong; of all visitors 41 to 93 in 100"), run.out());
        assertTrue(run.out().contains("=sprayer: 5 times"), run.out());
        assertFalse(run.out().contains("helicopter"), "two times is one visit too few");
    }

    @Test
    void daysAreTakenAsAsked() {
        var document = run("report", "--json", "--from", "2026-04-01", "--to", "2026-04-30")
                .document(ReportCommand.ReportDocument.class);
        assertEquals(50, document.visits());
        assertEquals("2026-04-01", document.from());
        assertTrue(document.sections().stream().allMatch(section -> section.rows().isEmpty()));

        Run wrong = run("report", "--from", "2026-05-02", "--to", "2026-05-01");
        assertTrue(wrong.err().contains("give the earlier day first"), wrong.err());
    }

    @Test
    void theTableHoldsNoFormulaAndNothingRare() throws IOException {
        Path out = folder.resolve("report.csv");
        run("report", "--out", out.toString()).fine();
        String table = Files.readString(out);
        assertTrue(table.startsWith("section,id,name,number,low,high,words\r\n"), table);
        assertTrue(table.contains("wrong,quick-attach,"), table);
        assertTrue(table.contains(",0.750,0.409,0.929,"), table);
        assertTrue(table.contains("sought,'=sprayer,'=sprayer,5,,,"), table);
        assertFalse(table.contains("helicopter"), table);
    }
}
