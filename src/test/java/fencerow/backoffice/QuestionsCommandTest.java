package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.QuestionsDocument;
import fencerow.backoffice.document.QuestionsDocument.OptionEntry;
import fencerow.backoffice.document.QuestionsDocument.QuestionEntry;
import fencerow.needs.Questionnaire;
import java.math.BigDecimal;
import java.util.List;
import org.junit.jupiter.api.Test;

class QuestionsCommandTest {
    @Test
    void allQuestionsComeInAskingOrderWithWhatTheyTake() {
        QuestionsDocument document = Run.of("questions", "--json").fine().document(QuestionsDocument.class);
        Questionnaire questionnaire = Run.shipped().showroom().questionnaire();

        assertEquals(
                questionnaire.questions().stream().map(question -> question.id().value()).toList(),
                document.questions().stream().map(QuestionEntry::id).toList());
        for (QuestionEntry question : document.questions()) {
            assertEquals(question.choose().equals("amount"), question.range().isPresent(), question.id());
            assertEquals(question.choose().equals("amount"), question.options().isEmpty(), question.id());
            question.when().forEach(when -> assertTrue(document.questions().stream()
                    .filter(other -> other.id().equals(when.question()))
                    .flatMap(other -> other.options().stream())
                    .map(OptionEntry::id)
                    .toList()
                    .containsAll(when.options()), question.id()));
        }
        QuestionEntry jobs = document.questions().get(0);
        assertEquals("jobs", jobs.choose());
        assertEquals(
                questionnaire.jobs().stream().map(job -> job.id().value()).toList(),
                jobs.options().stream().map(OptionEntry::id).toList());
    }

    @Test
    void rangesAreInSi() {
        QuestionsDocument document = Run.of("questions", "--json").fine().document(QuestionsDocument.class);
        QuestionEntry door = document.questions().stream()
                .filter(question -> question.id().equals("door-height"))
                .findFirst()
                .orElseThrow();

        QuestionsDocument.RangeEntry range = door.range().orElseThrow();
        assertEquals("m", range.unit());
        assertEquals("length", range.measures());
        // From 5 ft; the foot is 0.3048 m (international yard and pound agreement, 1959).
        assertEquals(new BigDecimal("1.524"), range.from());
        assertTrue(range.typical().size() > 1);
    }

    @Test
    void textGivesIdsWordsAndRangesAsPeopleSayThem() {
        List<String> lines = Run.of("questions").fine().out().lines().toList();

        assertTrue(lines.contains("door-height: How low is your lowest door?"), lines.toString());
        assertTrue(lines.stream().anyMatch(line -> line.strip().startsWith("front-blower ")), lines.toString());
        assertTrue(lines.stream().anyMatch(line -> line.contains("to 16\u00a0ft")), lines.toString());
    }
}
