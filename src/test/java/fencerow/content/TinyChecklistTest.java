package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.checklist.Because;
import fencerow.checklist.ChecklistLine;
import fencerow.quiz.Belief;
import fencerow.terms.OptionId;
import fencerow.terms.PriceRange;
import fencerow.terms.QuestionId;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** What checklist lines say of themselves, seen on the list of a shopper in the tiny showroom. */
class TinyChecklistTest {
    @TempDir
    private Path folder;

    private List<ChecklistLine> list(Visit visit) {
        var showroom = TinyContent.copyTo(folder).readGood().showroom();
        return showroom.checklist(visit, showroom.stakes(visit, showroom.ranking(visit)));
    }

    private static Optional<ChecklistLine> find(List<ChecklistLine> list, String id) {
        return list.stream().filter(line -> line.id().equals(id)).findFirst();
    }

    private static Visit believing(String question, String option) {
        return Visit.NEW.believed(new QuestionId(question), Belief.of(new OptionId(option)));
    }

    @Test
    void aLineForATopicIsThereWhenTheQuizTouchedTheTopic() {
        ChecklistLine line = find(list(believing("check-resale", "repaint-it")), "bills-kept").orElseThrow();
        assertTrue(line.because().get(0) instanceof Because.WrongBelief, () -> line.because().toString());
        assertEquals(500 * 0.2, line.expected(), 1e-9, "middle of $100 to $900, surely wrong, of no other weight");
    }

    @Test
    void aLineForATopicIsNotThereOtherwise() {
        assertEquals(Optional.empty(), find(list(believing("check-resale", "keep-bills")), "bills-kept"));
    }

    @Test
    void aFeaturesLineKeepsItsOwnMoneyAndTakesTheFeaturesWhereItHasNone() {
        List<ChecklistLine> lines = list(believing("quick-attach", "comes-with-it"));
        assertEquals(PriceRange.ofDollars(600, 1800), find(lines, "roll-bar-sound").orElseThrow().atStake().money());
        assertEquals(PriceRange.ofDollars(500, 1100), find(lines, "quick-attach").orElseThrow().atStake().money());
    }

    @Test
    void aLineForEveryoneSaysAlsoThatTheShopperWasWrong() {
        ChecklistLine line = find(list(believing("roll-bar", "can-be-added")), "roll-bar-sound").orElseThrow();
        assertEquals(List.of("wrong-belief", "for-everyone"), line.because().stream().map(Because::id).toList());
    }
}
