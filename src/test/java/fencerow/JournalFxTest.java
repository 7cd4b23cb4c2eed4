package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.content.AnswersReader;
import fencerow.content.Reading;
import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Tally;
import fencerow.kiosk.Fx;
import fencerow.kiosk.LiveKiosk;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.TextSize;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.quiz.Belief;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What the running kiosk writes into its journal when visits end, and that it writes nothing else. */
class JournalFxTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-02T10:15:30Z"), ZoneOffset.UTC);
    private static final LocalDate TODAY = LocalDate.parse("2026-03-02");
    private static final QuestionId STANDS = new QuestionId("loader-stands");
    private static final QuestionId JOBS = new QuestionId("jobs");

    @TempDir
    private Path folder;

    private static void on(LiveKiosk kiosk, Consumer<Frame> done) {
        Fx.on(() -> {
            done.accept(kiosk.frame());
            return true;
        });
    }

    private static Answers answers(LiveKiosk kiosk, String shopper) {
        var questionnaire = Fx.on(() -> kiosk.frame().premises().showroom().questionnaire());
        Reading<Answers> read = new AnswersReader(questionnaire)
                .read(Path.of("src/test/resources/shoppers", shopper + ".yaml"));
        return ((Reading.Good<Answers>) read).content();
    }

    /** Snow to clear; asks, learns, is wrong, searches in vain, prints. */
    private static void thoroughVisit(LiveKiosk kiosk) {
        Answers all = answers(kiosk, "long-drive");
        on(kiosk, frame -> {
            frame.go(new Place.Home());
            frame.go(new Place.Questions(Optional.of(JOBS), Set.of(), false, 0));
            all.byQuestion().forEach((question, answer) -> frame.change(visit -> visit.answered(question, answer)));
            frame.change(visit -> visit.believed(new QuestionId("quick-attach"),
                            Belief.of(new OptionId("comes-with-it")))
                    .believed(STANDS, Belief.of(frame.premises().showroom().quiz().find(STANDS).orElseThrow().key()))
                    .believed(new QuestionId("rear-remotes"), Belief.NOT_SURE));
            frame.go(Place.Topic.of(new TopicId("loader")));
            kiosk.clock().pass(Duration.ofSeconds(40));
            frame.change(new Comfort("es", TextSize.LARGE, true, false));
            frame.change(new Comfort("en", TextSize.NORMAL, false, false));
            frame.go(new Place.Print());
        });
        var shopper = new Shopper(kiosk.shown(), kiosk.window().stage());
        shopper.touch("Save it");
        shopper.waitForWords("Ask at the desk");
        on(kiosk, frame -> frame.go(new Place.Find("helicopter", Optional.empty(), 0)));
        shopper.waitForWords("Nothing found for");
        // The visit ends where the search found nothing.
        on(kiosk, frame -> frame.startOver(new Place.Attract()));
    }

    /** A door so low that nothing goes through it. */
    private static void hopelessVisit(LiveKiosk kiosk) {
        on(kiosk, frame -> {
            frame.go(new Place.Home());
            frame.change(visit -> visit
                    .answered(JOBS, new Answer.Chosen(List.of(new OptionId("mow-lawn"))))
                    .answered(new QuestionId("door-height"), new Answer.Measured(new Amount(Dimension.LENGTH, 1.524))));
            frame.startOver(new Place.Attract());
        });
    }

    private static void failingVisit(LiveKiosk kiosk) {
        on(kiosk, frame -> {
            frame.go(new Place.Home());
            frame.go(Place.Topics.FIRST);
            frame.failed(new IllegalStateException("what a shopper typed"));
        });
    }

    private static Tally journal(LiveKiosk kiosk) {
        return Fx.on(() -> kiosk.frame().premises().counts().sum(TODAY, TODAY));
    }

    @Test
    void everythingThatIsCountedReachesTheJournalOnceThreeVisitsHaveEnded() {
        DemoShowroom demo = DemoShowroom.in(folder);
        var wiring = new KioskWiring(CLOCK, "", config -> demo.data());
        Tally journal;
        try (LiveKiosk kiosk = LiveKiosk.of(new KioskFiles(wiring, demo.folders()))) {
            thoroughVisit(kiosk);
            hopelessVisit(kiosk);
            failingVisit(kiosk);
            kiosk.waitFor(() -> !journal(kiosk).equals(Tally.NONE), "a third visit in the journal");
            journal = journal(kiosk);
        }

        Set<Kind> missing = EnumSet.allOf(Kind.class);
        missing.removeAll(journal.counts().keySet().stream().map(Counter::kind).toList());
        assertEquals(Set.of(), missing);
        assertEquals(3, journal.count(Kind.VISIT, ""));
        assertEquals(1, journal.count(Kind.FAILED, "IllegalStateException"));
        assertEquals(1, journal.count(Kind.ASKED, "jobs"));
        assertEquals(2, journal.count(Kind.ANSWERED, "jobs"));
        assertEquals(1, journal.count(Kind.BELIEF_WRONG, "quick-attach"));
        assertEquals(1, journal.count(Kind.BELIEF_UNSURE, "rear-remotes"));
        assertEquals(1, journal.count(Kind.NOT_FOUND, "helicopter"));
        assertEquals(1, journal.count(Kind.READ, "loader"), "another look at the same page is not another reading");
        assertEquals(1, journal.count(Kind.SHOWN, "topic"));
        assertEquals(40, journal.count(Kind.SECONDS, "topic"));
        assertEquals(1, journal.count(Kind.PRINTED, ""));
        assertEquals(1, journal.count(Kind.UNMET, "height"));
        assertTrue(journal.counts().keySet().stream().noneMatch(counter ->
                (counter.subject() + counter.detail()).contains("typed")), journal.toString());
    }
}
