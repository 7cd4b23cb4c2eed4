package fencerow.kiosk.answers;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.wording.AnswerWords;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Puts answers into words. */
final class AnswersInteractor {
    private final Questionnaire questionnaire;
    private final AnswerWords words;

    AnswersInteractor(Questionnaire questionnaire, AnswerWords words) {
        this.questionnaire = questionnaire;
        this.words = words;
    }

    AnswersModel model(Answers answers) {
        List<AnswersModel.Row> given = new ArrayList<>();
        List<AnswersModel.Row> open = new ArrayList<>();
        for (Question question : questionnaire.applying(answers)) {
            Optional<Answer> answer = answers.find(question.id());
            String said = answer.map(each -> words.answer(question, each))
                    .orElseGet(() -> words.phrases().texts().get("kiosk.answers.open"));
            (answer.isPresent() ? given : open)
                    .add(new AnswersModel.Row(question.id(), words.ask(question), said));
        }
        return new AnswersModel(given, open);
    }
}
