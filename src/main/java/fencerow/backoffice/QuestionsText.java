package fencerow.backoffice;

import fencerow.backoffice.document.QuestionsDocument;
import fencerow.backoffice.document.QuestionsDocument.QuestionEntry;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.QuestionId;
import fencerow.wording.Phrases;
import java.util.List;
import java.util.Map;

/** The questions about the work as plain text. */
final class QuestionsText {
    private QuestionsText() {}

    static String of(QuestionsDocument document, Questionnaire questionnaire, Phrases phrases) {
        var sheet = new TextSheet();
        for (QuestionEntry entry : document.questions()) {
            sheet.heading(entry.id() + ": " + entry.ask());
            entry.when().forEach(when -> sheet.line(4, phrases.texts().get("backoffice.questions.when", Map.of(
                    "question", when.question(), "options", phrases.list(when.options())))));
            sheet.rows(4, entry.options().stream()
                    .map(option -> List.of(option.id(), option.label() + option.hint().map(h -> ". " + h).orElse("")))
                    .toList());
            questionnaire.find(new QuestionId(entry.id()))
                    .flatMap(Question::scale)
                    .ifPresent(scale -> sheet.line(4, phrases.texts().get("backoffice.questions.range", Map.of(
                            "from", phrases.amount(scale.from()),
                            "to", phrases.amount(scale.to()),
                            "step", phrases.amount(scale.step())))));
        }
        return sheet.toString();
    }
}
