package fencerow.kiosk.quiz;

import fencerow.checklist.Stakes;
import fencerow.explainers.Pictures;
import fencerow.kiosk.kit.Sketch;
import fencerow.quiz.Belief;
import fencerow.quiz.Outcome;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.OptionId;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.random.RandomGenerator;

/** Thinks about one quiz question. */
final class QuizInteractor {
    /** Questions in a run: few enough to finish standing. */
    static final int RUN = 6;

    private final Phrases phrases;
    private final Texts texts;

    private final Pictures pictures;

    QuizInteractor(Phrases phrases, Pictures pictures) {
        this.phrases = phrases;
        this.pictures = pictures;
        this.texts = phrases.texts();
    }

    /**
     * The question, and what is said to the visit's answer.
     *
     * @param random shuffles the options of a check question; the belief scale keeps its order, because it is a scale
     */
    QuizModel model(QuizQuestion question, Visit visit, Optional<Stakes> stakes, RandomGenerator random) {
        Optional<Belief> belief = visit.beliefs().find(question.id());
        List<QuizModel.Option> options = shuffled(question, random).stream()
                .map(option -> new QuizModel.Option(option, phrases.labels().quizOption(question, option),
                        option.equals(question.key()),
                        belief.flatMap(Belief::option).equals(Optional.of(option))))
                .toList();
        int answered = visit.beliefs().byQuestion().size();
        int done = (belief.isPresent() ? answered - 1 : answered) % RUN;
        QuizModel.Progress progress = new QuizModel.Progress(done, RUN,
                texts.get("kiosk.quiz.progress", Map.of("number", done + 1, "all", RUN)));
        return new QuizModel(texts.get("quiz." + question.id() + ".ask"), options, progress,
                sketch(question, belief.isPresent()),
                belief.map(given -> reply(question, given, stakes, done + 1 == RUN)));
    }

    /** How to check a thing is what its drawing shows, so that comes after the answer. */
    private Optional<Sketch> sketch(QuizQuestion question, boolean answered) {
        return answered || question.kind() != QuizQuestion.Kind.CHECK
                ? Sketch.of(pictures.of(question.topic()), texts)
                : Optional.empty();
    }

    private static List<OptionId> shuffled(QuizQuestion question, RandomGenerator random) {
        List<OptionId> options = new ArrayList<>(question.options());
        if (question.kind() == QuizQuestion.Kind.CHECK) {
            for (int i = options.size() - 1; i > 0; i--) {
                Collections.swap(options, i, random.nextInt(i + 1));
            }
        }
        return options;
    }

    private QuizModel.Reply reply(QuizQuestion question, Belief belief, Optional<Stakes> stakes, boolean last) {
        Outcome outcome = question.outcome(belief);
        Optional<String> refutation = belief.option()
                .filter(option -> outcome == Outcome.WRONG)
                .flatMap(option -> texts.find("quiz." + question.id() + ".option." + option + ".no"));
        Optional<String> stress = outcome == Outcome.WRONG && belief.sure()
                ? Optional.of(texts.get("kiosk.quiz.stress"))
                : Optional.empty();
        Optional<String> atStake = stakes.flatMap(known -> question.feature().map(known::of))
                .filter(each -> each.job() || !each.money().isZero())
                .map(phrases::atStake);
        return new QuizModel.Reply(heading(outcome), refutation, texts.get("quiz." + question.id() + ".right"), stress,
                atStake, question.topic(), last);
    }

    private String heading(Outcome outcome) {
        return texts.get(switch (outcome) {
            case RIGHT -> "kiosk.quiz.right";
            case WRONG -> "kiosk.quiz.wrong";
            case UNSURE -> "kiosk.quiz.unsure";
        });
    }
}
