package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.LiveKiosk;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Place;
import fencerow.needs.Answer;
import fencerow.needs.Question;
import fencerow.printing.PrintOutcome;
import fencerow.quiz.Belief;
import fencerow.quiz.QuizQuestion;
import fencerow.search.Query;
import fencerow.stock.Unit;
import fencerow.terms.TopicId;
import fencerow.visit.Visit;
import java.io.IOException;
import java.lang.ref.WeakReference;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Many whole visits, from the first touch to the paper: memory and open files stay as they are, and nothing of a visit
 * is kept. Long with {@code -Dfencerow.soak=2000}.
 */
class SoakFxTest {
    private static final int VISITS = Integer.getInteger("fencerow.soak", 6);
    private static final long SEED = Long.getLong("fencerow.soak.seed", 20_261_125);
    private static final int ROWS = 10;
    private static final long MOST_GROWTH = 24_000_000;
    private static final long MOST_FILES = 8;
    private static final Path OPEN_FILES = Path.of("/proc/self/fd");

    @TempDir
    private Path folder;

    private record Row(int visits, long heap, long files) {}

    @Test
    void manyVisitsLeaveMemoryAndOpenFilesAsTheyWere() throws Exception {
        DemoShowroom demo = DemoShowroom.in(folder);
        demo.change("showroom.yaml", "copies: {visit: 4, hour: 40}", "copies: {visit: 4, hour: 1000}");
        Clock clock = new Ticking(Instant.parse("2026-03-02T10:15:30Z"));
        var random = new Random(SEED);
        List<Row> rows = new ArrayList<>();
        try (LiveKiosk kiosk = LiveKiosk.of(new KioskFiles(new KioskWiring(clock, "", demo.data()), demo.folders()))) {
            int warm = Math.max(4, VISITS / 20);
            for (int i = 0; i < warm; i++) {
                visit(kiosk, random);
            }
            rows.add(measure(0));
            for (int i = 1; i <= VISITS; i++) {
                WeakReference<Visit> last = visit(kiosk, random);
                if (i % Math.max(1, VISITS / ROWS) == 0) {
                    rows.add(measure(i));
                    assertTrue(last.refersTo(null), "a visit is kept after its end; seed " + SEED + ", visit " + i);
                }
            }
            assertEquals(Optional.empty(), kiosk.window().ending());
        }
        rows.forEach(row -> System.out.printf(Locale.ROOT, "after %5d visits: heap %6.1f MB, open files %d%n",
                row.visits(), row.heap() / 1e6, row.files()));
        Row first = rows.get(0);
        Row end = rows.get(rows.size() - 1);
        assertTrue(end.heap() - first.heap() < MOST_GROWTH, () -> "memory grew: " + rows);
        assertTrue(end.files() - first.files() <= MOST_FILES, () -> "files stay open: " + rows);
    }

    private static WeakReference<Visit> visit(LiveKiosk kiosk, Random random) throws Exception {
        Fx.on(() -> {
            Frame frame = kiosk.frame();
            frame.go(new Place.Home());
            frame.go(Place.Topic.of(new TopicId("quick-attach")));
            for (Question question : frame.premises().showroom().questionnaire().questions()) {
                if (!question.options().isEmpty() && random.nextInt(3) > 0) {
                    Answer answer = new Answer.Chosen(List.of(
                            question.options().get(random.nextInt(question.options().size())).id()));
                    frame.change(visit -> visit.answered(question.id(), answer));
                }
            }
            return true;
        });
        kiosk.waitFor(() -> kiosk.frame().outlook().get().isPresent(), "what the answers come to");
        Fx.on(() -> {
            Frame frame = kiosk.frame();
            List<Unit> units = frame.premises().showroom().units();
            frame.go(Place.Results.TOP);
            frame.go(Place.UnitSheet.of(units.get(random.nextInt(units.size())).id()));
            frame.go(Place.Find.EMPTY);
            frame.premises().search().find(Query.of("front blower", frame.comfort().language()));
            List<QuizQuestion> quiz = frame.premises().showroom().quiz().questions();
            for (int i = 0; i < 5; i++) {
                QuizQuestion question = quiz.get(random.nextInt(quiz.size()));
                Belief belief = Belief.of(question.options().get(random.nextInt(question.options().size())));
                frame.change(visit -> visit.believed(question.id(), belief));
            }
            frame.go(Place.Quiz.NEXT);
            frame.go(Place.QuizSummary.TOP);
            frame.change(frame.comfort().withOtherContrast());
            frame.go(Place.ListPreview.TOP);
            return true;
        });
        Visit told = Fx.on(() -> kiosk.frame().visit().get());
        Comfort comfort = Fx.on(() -> kiosk.frame().comfort());
        ListPrinter printer = Fx.on(() -> kiosk.frame().premises().printer());
        PrintOutcome outcome = printer.print(told, comfort, Set.of(ListPrinter.Part.LIST)).outcome();
        assertTrue(outcome.isDone(), outcome::toString);
        if (outcome instanceof PrintOutcome.Saved saved) {
            Files.delete(saved.file());
        }
        Fx.on(() -> {
            kiosk.frame().startOver(new Place.Attract());
            return true;
        });
        kiosk.waitFor(() -> kiosk.frame().outlook().get().isPresent(), "what no answers come to");
        return new WeakReference<>(told);
    }

    private static Row measure(int visits) throws IOException, InterruptedException {
        for (int i = 0; i < 3; i++) {
            Fx.on(() -> true);
            System.gc();
            Thread.sleep(50);
        }
        long files = 0;
        if (Files.isDirectory(OPEN_FILES)) {
            try (Stream<Path> open = Files.list(OPEN_FILES)) {
                files = open.count();
            }
        }
        Runtime runtime = Runtime.getRuntime();
        return new Row(visits, runtime.totalMemory() - runtime.freeMemory(), files);
    }

    /** A clock that is a minute on each time it is read, so that no list takes another's name or place in the hour. */
    private static final class Ticking extends Clock {
        private Instant now;

        Ticking(Instant start) {
            now = start;
        }

        @Override
        public synchronized Instant instant() {
            now = now.plus(Duration.ofMinutes(1));
            return now;
        }

        @Override
        public ZoneId getZone() {
            return ZoneOffset.UTC;
        }

        @Override
        public Clock withZone(ZoneId zone) {
            return this;
        }
    }
}
