package fencerow.kiosk.quiz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Pictures;
import fencerow.kiosk.Rooms;
import fencerow.quiz.Belief;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.OptionId;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Random;
import org.junit.jupiter.api.Test;

class QuizInteractorTest {
    private static final int SEEDS = 300;
    /** Chi-square, two degrees of freedom, at a chance of one in a thousand (handbook tables of the distribution). */
    private static final double LIMIT = 13.816;

    private static final List<QuizQuestion> QUESTIONS = Rooms.premises().showroom().quiz().questions();
    private static final Pictures PICTURES =
            Optional.ofNullable(Rooms.premises().libraries().get("en")).orElseThrow().pictures();
    private static final QuizInteractor QUIZ = new QuizInteractor(
            new Phrases(Rooms.premises().texts().get("en"), new Quantities(Locale.US, false)::show), PICTURES);

    /** A drawing shows where a thing sits, which is what a question about checking asks. */
    @Test
    void aDrawingGivesNoAnswerAway() {
        for (QuizQuestion question : QUESTIONS) {
            boolean asksWhere = question.kind() == QuizQuestion.Kind.CHECK;
            assertFalse(asksWhere && model(question, Visit.NEW, 1).sketch().isPresent(), question.id().value());
            Visit answered = Visit.NEW.believed(question.id(), Belief.NOT_SURE);
            assertEquals(PICTURES.of(question.topic()).isPresent(), model(question, answered, 1).sketch().isPresent(),
                    question.id().value());
        }
        assertTrue(QUESTIONS.stream().anyMatch(question -> model(question, Visit.NEW, 1).sketch().isPresent()));
    }

    private static QuizModel model(QuizQuestion question, Visit visit, long seed) {
        return QUIZ.model(question, visit, Optional.empty(), new Random(seed));
    }

    private static QuizQuestion first(QuizQuestion.Kind kind) {
        return QUESTIONS.stream().filter(question -> question.kind() == kind).findFirst().orElseThrow();
    }

    @Test
    void theRightOptionOfACheckQuestionStandsAnywhereWithTheSameChance() {
        QuizQuestion question = first(QuizQuestion.Kind.CHECK);
        int[] places = new int[3];
        for (long seed = 0; seed < SEEDS; seed++) {
            List<QuizModel.Option> options = model(question, Visit.NEW, seed).options();
            for (int i = 0; i < options.size(); i++) {
                places[i] += options.get(i).right() ? 1 : 0;
            }
        }
        double expected = SEEDS / 3.0;
        double chiSquare = 0;
        for (int count : places) {
            chiSquare += (count - expected) * (count - expected) / expected;
        }
        assertTrue(chiSquare < LIMIT, "places of the key over seeds 0 to " + (SEEDS - 1) + ": "
                + places[0] + ", " + places[1] + ", " + places[2]);
    }

    @Test
    void theBeliefScaleKeepsItsOrder() {
        QuizQuestion question = first(QuizQuestion.Kind.BELIEF);
        for (long seed = 0; seed < 20; seed++) {
            assertEquals(QuizQuestion.BELIEF_SCALE,
                    model(question, Visit.NEW, seed).options().stream().map(QuizModel.Option::id).toList());
        }
    }

    @Test
    void everyWrongAnswerIsRefutedAndTheRightOneShownWithItsReason() {
        for (QuizQuestion question : QUESTIONS) {
            for (OptionId option : question.options()) {
                Visit visit = Visit.NEW.believed(question.id(), Belief.of(option));
                QuizModel.Reply reply = model(question, visit, 1).answer().orElseThrow();
                String what = question.id() + " answered " + option;
                assertEquals(!option.equals(question.key()), reply.refutation().isPresent(), what);
                assertFalse(reply.right().isBlank(), what);
                assertEquals(1, model(question, visit, 1).options().stream().filter(QuizModel.Option::right).count());
            }
        }
    }

    @Test
    void beingSureAndWrongIsStressedAndNothingElseIs() {
        QuizQuestion question = first(QuizQuestion.Kind.BELIEF);
        OptionId wrong = question.options().stream().filter(each -> !each.equals(question.key())).findFirst()
                .orElseThrow();
        assertTrue(stressed(question, new Belief(Optional.of(wrong), true)));
        assertFalse(stressed(question, new Belief(Optional.of(wrong), false)));
        assertFalse(stressed(question, new Belief(Optional.of(question.key()), true)));
        assertFalse(stressed(question, Belief.NOT_SURE));
    }

    private static boolean stressed(QuizQuestion question, Belief belief) {
        return model(question, Visit.NEW.believed(question.id(), belief), 1)
                .answer().orElseThrow().stress().isPresent();
    }

    @Test
    void aRunEndsAfterSixAnswersAndTheNextBegins() {
        Visit visit = Visit.NEW;
        for (int i = 0; i < QuizInteractor.RUN + 1; i++) {
            QuizQuestion question = QUESTIONS.get(i);
            assertEquals(i % QuizInteractor.RUN, model(question, visit, 1).progress().done());
            visit = visit.believed(question.id(), Belief.NOT_SURE);
            assertEquals(i == QuizInteractor.RUN - 1, model(question, visit, 1).answer().orElseThrow().last());
        }
    }
}
