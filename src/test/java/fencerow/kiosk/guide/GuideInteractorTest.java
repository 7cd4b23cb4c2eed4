package fencerow.kiosk.guide;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Rooms;
import fencerow.needs.Answer;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.QuestionId;
import fencerow.terms.UnitId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class GuideInteractorTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();
    private static final GuideInteractor GUIDE = new GuideInteractor(SHOWROOM,
            new Phrases(Rooms.premises().texts().get("en"), new Quantities(Locale.US, false)::show));

    private static double budget(Visit visit) {
        return ((Answer.Measured) visit.answers().find(Questionnaire.BUDGET).orElseThrow()).amount().si();
    }

    @Test
    void theBudgetStaysWithinItsQuestionsRange() {
        Question.Scale scale = SHOWROOM.questionnaire().find(Questionnaire.BUDGET).flatMap(Question::scale)
                .orElseThrow();
        Visit low = Visit.NEW;
        Visit high = Visit.NEW;
        for (int i = 0; i < 50; i++) {
            low = GUIDE.budget(low, Optional.of(-5000L));
            high = GUIDE.budget(high, Optional.of(5000L));
        }
        assertEquals(scale.from().si(), budget(low));
        assertEquals(scale.to().si(), budget(high));
        assertEquals(Optional.empty(), GUIDE.budget(high, Optional.empty()).answers().find(Questionnaire.BUDGET));
    }

    @Test
    void backAsItWasTakesBackWhatWasTriedAndKeepsThePins() {
        Visit before = Visit.NEW.answered(new QuestionId("jobs"), Answer.Chosen.of("clear-snow"));
        UnitId pinned = SHOWROOM.units().get(0).id();
        Visit tried = GUIDE.budget(before, Optional.of(1000L)).toggleAside("jobs/clear-snow").togglePin(pinned);
        Visit back = GuideInteractor.asItWas(tried, before);
        assertEquals(before.answers(), back.answers());
        assertTrue(back.setAside().isEmpty());
        assertEquals(List.of(pinned), back.pinned());
    }
}
