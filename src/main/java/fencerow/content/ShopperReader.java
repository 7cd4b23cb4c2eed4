package fencerow.content;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.quiz.Belief;
import fencerow.quiz.Beliefs;
import fencerow.quiz.Quiz;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.Amount;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.BiFunction;

/**
 * Reads what one shopper answered: {@code answers: {jobs: [mow-lawn], door-height: 7 ft, steepest: not-sure}} and
 * {@code beliefs: {quick-attach: comes-with-it, mid-pto: {option: can-be-added, sure: true}}}. Finds every problem of a
 * file in one run.
 */
public final class ShopperReader {
    /** Reads answers to questions about the work. */
    public Reading<Answers> answers(Path file, Questionnaire questionnaire) {
        return read(file, "answers", (entries, problems) -> {
            Answers answers = Answers.NONE;
            List<String> known = questionnaire.questions().stream().map(each -> each.id().value()).toList();
            for (YamlNode.Entry entry : entries) {
                Optional<Question> question = questionnaire.questions().stream()
                        .filter(each -> each.id().value().equals(entry.key()))
                        .findFirst();
                if (question.isEmpty()) {
                    unknown(entry, "question", known, problems);
                } else {
                    answers = answers.with(question.get().id(), answer(question.get(), entry.value()));
                }
            }
            for (QuestionId unasked : unasked(questionnaire, answers)) {
                entries.stream().filter(entry -> entry.key().equals(unasked.value())).forEach(entry ->
                        problems.warning(entry.place(), "with these answers nobody asks [" + unasked + "]",
                                "take it out, or answer the question it hangs on"));
            }
            return answers;
        });
    }

    private static List<QuestionId> unasked(Questionnaire questionnaire, Answers answers) {
        List<QuestionId> asked = questionnaire.applying(answers).stream().map(Question::id).toList();
        return answers.byQuestion().keySet().stream().filter(id -> !asked.contains(id)).toList();
    }

    /** Reads answers to the quiz. */
    public Reading<Beliefs> beliefs(Path file, Quiz quiz) {
        return read(file, "beliefs", (entries, problems) -> {
            Beliefs beliefs = Beliefs.NONE;
            List<String> known = quiz.questions().stream().map(each -> each.id().value()).toList();
            for (YamlNode.Entry entry : entries) {
                Optional<QuizQuestion> question = quiz.questions().stream()
                        .filter(each -> each.id().value().equals(entry.key()))
                        .findFirst();
                if (question.isEmpty()) {
                    unknown(entry, "quiz question", known, problems);
                } else {
                    beliefs = beliefs.with(question.get().id(), belief(question.get(), entry.value()));
                }
            }
            return beliefs;
        });
    }

    private static <T> Reading<T> read(
            Path file, String key, BiFunction<List<YamlNode.Entry>, Problems, T> reader) {
        var problems = new Problems();
        Optional<SourceFile> source = SourceFile.read(file, file.toString(), problems);
        Optional<YamlNode> top = source.flatMap(text -> YamlFile.read(text, problems));
        if (source.isPresent() && top.isEmpty() && !problems.hasErrors()) {
            problems.error(source.get().at(1), "the file is empty", "write " + key + ": {...}");
        }
        Optional<T> read = top.flatMap(node -> node.map("answers", "beliefs").need(key))
                .map(node -> reader.apply(node.isNothing() ? List.of() : node.entries(), problems));
        return problems.hasErrors() || read.isEmpty()
                ? new Reading.Bad<>(problems.errors(), problems.warnings())
                : new Reading.Good<>(read.get(), problems.warnings());
    }

    private static void unknown(YamlNode.Entry entry, String kind, List<String> known, Problems problems) {
        problems.error(entry.place(), "there is no " + kind + " [" + entry.key() + "]",
                Nearest.advice(entry.key(), known, "use one of " + String.join(", ", known)));
    }

    private static Answer answer(Question question, YamlNode node) {
        if (node.isScalar() && node.text().equals(QuestionReader.NOT_SURE)) {
            return new Answer.NotSure();
        }
        if (question.scale().isPresent()) {
            return new Answer.Measured(measured(question.scale().get(), node));
        }
        List<YamlNode> picked = node.isList() ? node.list() : List.of(node);
        if (question.choose() == Question.Choose.ONE && picked.size() != 1) {
            node.error("the question takes one answer, not " + picked.size(), "write one word");
        }
        List<String> known = question.options().stream().map(option -> option.id().value()).toList();
        List<OptionId> options = new ArrayList<>();
        for (YamlNode each : picked) {
            pick(each, known).filter(option -> {
                if (options.contains(option)) {
                    each.error("[" + option + "] is picked twice", "delete one of them");
                }
                return !options.contains(option);
            }).ifPresent(options::add);
        }
        return new Answer.Chosen(options);
    }

    private static Optional<OptionId> pick(YamlNode node, List<String> known) {
        String text = node.text();
        if (known.contains(text)) {
            return Optional.of(new OptionId(text));
        }
        node.error("[" + text + "] is none of the answers",
                Nearest.advice(text, known, "use one of " + String.join(", ", known)));
        return Optional.empty();
    }

    /** An amount beyond what the kiosk offers is taken: a file may say more than a screen's buttons. */
    private static Amount measured(Question.Scale scale, YamlNode node) {
        int before = node.problems().count();
        Amount amount = node.amount(scale.dimension());
        if (node.problems().count() == before) {
            if (amount.si() <= 0) {
                node.error("[" + node.text() + "] is not above nothing", "write an amount above 0");
            } else if (amount.si() < scale.from().si() || amount.si() > scale.to().si()) {
                node.warning("[" + node.text() + "] lies beyond what the kiosk offers", "check number and unit");
            }
        }
        return amount;
    }

    private static Belief belief(QuizQuestion question, YamlNode node) {
        List<String> known = question.options().stream().map(OptionId::value).toList();
        if (node.isMap()) {
            YamlMap map = node.map("option", "sure");
            Optional<OptionId> option = map.need("option").flatMap(each -> pick(each, known));
            return new Belief(option, map.flag("sure"));
        }
        if (node.isScalar() && node.text().equals(QuestionReader.NOT_SURE)) {
            return Belief.NOT_SURE;
        }
        return pick(node, known).map(Belief::of).orElse(Belief.NOT_SURE);
    }
}
