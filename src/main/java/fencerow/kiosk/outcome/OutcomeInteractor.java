package fencerow.kiosk.outcome;

import fencerow.explainers.Explainer;
import fencerow.explainers.Library;
import fencerow.quiz.Belief;
import fencerow.quiz.Beliefs;
import fencerow.quiz.Outcome;
import fencerow.quiz.Quiz;
import fencerow.quiz.QuizQuestion;
import fencerow.wording.Labels;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Puts the quiz's outcomes into words. No score: a handful of answers says nothing of a person. */
final class OutcomeInteractor {
    private final Quiz quiz;
    private final Labels labels;
    private final Library library;

    OutcomeInteractor(Quiz quiz, Labels labels, Library library) {
        this.quiz = quiz;
        this.labels = labels;
        this.library = library;
    }

    OutcomeModel model(Beliefs beliefs) {
        List<OutcomeModel.Line> check = new ArrayList<>();
        List<OutcomeModel.Line> knew = new ArrayList<>();
        for (Map.Entry<QuizQuestion, Outcome> each : quiz.outcomes(beliefs).entrySet()) {
            Belief belief = beliefs.find(each.getKey().id()).orElse(Belief.NOT_SURE);
            (each.getValue() == Outcome.RIGHT ? knew : check).add(line(each.getKey(), belief));
        }
        return new OutcomeModel(check, knew);
    }

    private OutcomeModel.Line line(QuizQuestion question, Belief belief) {
        String name = question.feature()
                .map(labels::feature)
                .orElseGet(() -> library.find(question.topic())
                        .map(Explainer::title)
                        .orElseGet(() -> labels.texts().get("quiz." + question.id() + ".ask")));
        String said = belief.option()
                .map(option -> labels.quizOption(question, option))
                .orElseGet(() -> labels.texts().get("belief.not-sure"));
        return new OutcomeModel.Line(question.topic(), name, said, labels.quizOption(question, question.key()));
    }
}
