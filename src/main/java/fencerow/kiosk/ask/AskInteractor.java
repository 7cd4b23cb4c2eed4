package fencerow.kiosk.ask;

import fencerow.explainers.Picture;
import fencerow.explainers.Pictures;
import fencerow.kiosk.frame.BackRoom;
import fencerow.kiosk.kit.Sketch;
import fencerow.match.NextQuestion;
import fencerow.match.Ranking;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.Amount;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.visit.Showroom;
import fencerow.wording.AnswerWords;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** Thinks about questions and answers; knows no screen. */
final class AskInteractor {
    /** A scale with more steps than this gets buttons for ten steps at once. */
    private static final double MANY_STEPS = 24;

    private final Showroom showroom;
    private final AnswerWords words;
    private final Texts texts;
    private final Pictures pictures;

    AskInteractor(Showroom showroom, AnswerWords words, Pictures pictures) {
        this.showroom = showroom;
        this.pictures = pictures;
        this.words = words;
        this.texts = words.phrases().texts();
    }

    /** The question to show: the one named where it applies, else the next open one that was not skipped. */
    Optional<Question> find(Optional<QuestionId> named, Answers answers, Set<QuestionId> skipped) {
        return named.flatMap(questionnaire()::find)
                .filter(question -> questionnaire().applying(answers).contains(question))
                .or(() -> open(answers, skipped).findFirst());
    }

    private Questionnaire questionnaire() {
        return showroom.questionnaire();
    }

    private Stream<Question> open(Answers answers, Set<QuestionId> skipped) {
        return questionnaire().applying(answers).stream()
                .filter(question -> answers.find(question.id()).isEmpty() && !skipped.contains(question.id()));
    }

    /** The question after the one shown: the one suggested where it is still open, else the next in order. */
    Optional<QuestionId> after(
            QuestionId shown, Answers answers, Set<QuestionId> skipped, Optional<QuestionId> suggested) {
        List<QuestionId> open = open(answers, skipped)
                .map(Question::id)
                .filter(id -> !id.equals(shown))
                .toList();
        return suggested.filter(open::contains).or(() -> open.stream().findFirst());
    }

    /**
     * The question that tells most besides the one shown, whatever is answered to that; empty where no answer would
     * change the first tractors much. Takes long.
     */
    Optional<QuestionId> suggest(QuestionId shown, Answers answers, Set<QuestionId> skipped) {
        Answers leftOpen = answers;
        for (QuestionId each : skipped) {
            leftOpen = leftOpen.with(each, new Answer.NotSure());
        }
        if (leftOpen.find(shown).isEmpty()) {
            leftOpen = leftOpen.with(shown, new Answer.NotSure());
        }
        return NextQuestion.usual(questionnaire())
                .after(leftOpen, showroom.lot(), BackRoom::isDropped)
                .map(Question::id);
    }

    AskModel.Card card(Question question, Answers answers, boolean alone) {
        List<Question> applying = questionnaire().applying(answers);
        int done = (int) applying.stream()
                .filter(each -> answers.find(each.id()).isPresent())
                .count();
        int left = applying.size() - done;
        String progress = texts.get("kiosk.ask.progress", Map.of("done", done, "left", left));
        return new AskModel.Card(words.ask(question), words.why(question), question.choose(), tiles(question),
                steps(question), done, left, progress, alone);
    }

    private List<AskModel.Tile> tiles(Question question) {
        if (question.choose() == Question.Choose.JOBS) {
            return questionnaire().jobs().stream()
                    .map(job -> tile(question, new OptionId(job.id().value()), pictures.of(job.id())))
                    .toList();
        }
        if (question.choose() == Question.Choose.AMOUNT) {
            return typical(question)
                    .map(amount -> new AskModel.Tile(
                            AskModel.key(amount), words.amount(question, amount), Optional.empty(), Optional.empty()))
                    .toList();
        }
        return question.options().stream()
                .map(option -> tile(question, option.id(), option.about().flatMap(pictures::of)))
                .toList();
    }

    private AskModel.Tile tile(Question question, OptionId option, Optional<Picture> picture) {
        return new AskModel.Tile(option.value(), words.option(question, option),
                texts.find("question." + question.id() + ".option." + option + ".hint"),
                Sketch.of(picture, texts));
    }

    private static Stream<Amount> typical(Question question) {
        return question.scale().stream()
                .flatMap(scale -> scale.typical().stream())
                .map(Question.Typical::value);
    }

    private List<AskModel.Step> steps(Question question) {
        List<AskModel.Step> steps = new ArrayList<>();
        question.scale().ifPresent(scale -> {
            boolean many = (scale.to().si() - scale.from().si()) / scale.step().si() > MANY_STEPS;
            List<Integer> sizes = many ? List.of(-10, -1, 1, 10) : List.of(-1, 1);
            sizes.forEach(size -> steps.add(new AskModel.Step(size, stepWords(question, scale, size))));
        });
        return steps;
    }

    private String stepWords(Question question, Question.Scale scale, int size) {
        var amount = new Amount(scale.dimension(), Math.abs(size) * scale.step().si());
        return texts.get(size < 0 ? "kiosk.ask.less" : "kiosk.ask.more",
                Map.of("amount", words.amount(question, amount)));
    }

    AskModel.Given given(Question question, Answers answers) {
        Optional<Answer> answer = answers.find(question.id());
        if (answer.isEmpty()) {
            return AskModel.Given.NOTHING;
        }
        if (answer.get() instanceof Answer.Measured measured) {
            return new AskModel.Given(Set.of(AskModel.key(measured.amount())),
                    Optional.of(words.amount(question, measured.amount())), false, true);
        }
        Set<String> keys = answers.chosen(question.id()).stream().map(OptionId::value).collect(Collectors.toSet());
        return new AskModel.Given(keys, Optional.empty(), answer.get() instanceof Answer.NotSure, true);
    }

    /** The answer after a touch on a tile; empty where the last thing picked was let go again. */
    Optional<Answer> picked(Question question, Answers answers, String key) {
        if (question.choose() == Question.Choose.AMOUNT) {
            return typical(question)
                    .filter(amount -> AskModel.key(amount).equals(key))
                    .findFirst()
                    .map(Answer.Measured::new);
        }
        var option = new OptionId(key);
        if (question.choose() == Question.Choose.ONE) {
            return Optional.of(new Answer.Chosen(List.of(option)));
        }
        List<OptionId> all = new ArrayList<>(answers.chosen(question.id()));
        if (!all.remove(option)) {
            all.add(option);
        }
        return all.isEmpty() ? Optional.empty() : Optional.of(new Answer.Chosen(all));
    }

    /** The answer after a change by so many steps; the most common amount where none was set. */
    Optional<Answer> changed(Question question, Answers answers, int steps) {
        return question.scale().map(scale -> {
            double si = answers.find(question.id())
                    .filter(Answer.Measured.class::isInstance)
                    .map(answer -> stepped(scale, ((Answer.Measured) answer).amount().si(), steps))
                    .orElseGet(() -> start(scale));
            return new Answer.Measured(new Amount(scale.dimension(), si));
        });
    }

    private static double stepped(Question.Scale scale, double si, int steps) {
        long place = Math.round((si - scale.from().si()) / scale.step().si()) + steps;
        double next = scale.from().si() + place * scale.step().si();
        return Math.max(scale.from().si(), Math.min(scale.to().si(), next));
    }

    private static double start(Question.Scale scale) {
        return scale.typical().stream()
                .max(Comparator.comparingInt(Question.Typical::share))
                .map(typical -> typical.value().si())
                .orElse(scale.from().si());
    }

    AskModel.Fits fits(Ranking ranking) {
        int count = ranking.ready().size();
        return new AskModel.Fits(count, texts.get("kiosk.ask.fits", Map.of(
                "count", count, "all", ranking.matches().size())));
    }
}
