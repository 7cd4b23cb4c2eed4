package fencerow.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import fencerow.kiosk.Rooms;
import fencerow.needs.Answer;
import fencerow.needs.Question;
import fencerow.quiz.Belief;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** A visit written down and read again, here and where other things are asked. */
class RememberedTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();

    private static Visit choose(Visit visit, String question, String... options) {
        return visit.answered(new QuestionId(question),
                new Answer.Chosen(List.of(options).stream().map(OptionId::new).toList()));
    }

    /** Everything a visit can hold but the second quote. */
    private static Visit full() {
        Visit visit = choose(choose(Visit.NEW, "jobs", "clear-snow", "keep-drive"), "snow-tool", "front-blower")
                .answered(new QuestionId("budget"), new Answer.Measured(new Amount(Dimension.MONEY, 18_000)))
                .answered(new QuestionId("winter-low"), new Answer.NotSure())
                .believed(new QuestionId("quick-attach"), new Belief(Optional.of(new OptionId("comes-with-it")), true))
                .believed(new QuestionId("mid-pto"), Belief.of(new OptionId("cannot-be-added")))
                .believed(new QuestionId("rear-remotes"), Belief.NOT_SURE)
                .toggleLine(SHOWROOM.composer().templates().get(3).id());
        for (Unit unit : SHOWROOM.units().subList(0, 3)) {
            visit = visit.togglePin(unit.id());
        }
        return visit.toggleAside(SHOWROOM.needs(visit).musts().get(0).id());
    }

    @Test
    void aVisitReadsAsItWasWritten() {
        assertEquals(new Remembered(full(), 0, 0), Remembered.read(Remembered.write(full()), SHOWROOM));
        assertEquals(new Remembered(Visit.NEW, 0, 0), Remembered.read(Remembered.write(Visit.NEW), SHOWROOM));
    }

    @Test
    void everyQuestionsEveryOptionAndTypicalAmountReadAsTheyWereWritten() {
        for (Question question : SHOWROOM.questionnaire().questions()) {
            for (Question.Option option : question.options()) {
                Visit visit = choose(Visit.NEW, question.id().value(), option.id().value());
                assertEquals(new Remembered(visit, 0, 0), Remembered.read(Remembered.write(visit), SHOWROOM));
            }
            question.scale().ifPresent(scale -> scale.typical().forEach(typical -> {
                Visit visit = Visit.NEW.answered(question.id(), new Answer.Measured(typical.value()));
                assertEquals(new Remembered(visit, 0, 0), Remembered.read(Remembered.write(visit), SHOWROOM));
            }));
        }
    }

    @Test
    void whatIsNoLongerAskedOrHereIsLeftOutAndCounted() {
        String written = Remembered.write(full()) + """

                answer no-such-question x
                answer cab no-such-option
                answer jobs clear-snow no-such-job
                amount budget LENGTH 3.0
                amount budget MONEY 1.0E12
                amount budget MONEY
                amount gate-width x y
                belief no-such-question x
                sure mid-pto no-such-option
                pin sold-last-week
                aside gone
                struck gone
                something of a newer version
                answer
                """;
        Remembered read = Remembered.read(written, SHOWROOM);
        assertEquals(full().beliefs(), read.visit().beliefs());
        assertEquals(full().pinned(), read.visit().pinned());
        assertEquals(full().leftOut(), read.visit().leftOut());
        assertEquals(List.of(new OptionId("clear-snow")), read.visit().answers().chosen(new QuestionId("jobs")));
        assertEquals(11, read.lostAnswers());
        assertEquals(1, read.lostUnits());
    }

    @Test
    void anotherSellersTractorIsNotWrittenDown() {
        String before = Remembered.write(full());
        Visit told = full().told(Optional.of(SHOWROOM.units().get(0)));
        assertEquals(before, Remembered.write(told));
        assertFalse(before.contains("18_000"));
    }

    @Test
    void aCodeIsGoneOnceAnythingElseChanges() {
        var code = new ReturnCode("K7QM-3F9T-XW2Y", LocalDate.parse("2026-05-01"));
        Visit kept = full().kept(code);
        assertEquals(Optional.of(code), kept.code());
        assertEquals(Optional.empty(), kept.togglePin(SHOWROOM.units().get(5).id()).code());
        assertEquals(full().answers(), kept.answers());
    }
}
