package fencerow.content;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.Amount;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads a shopper's answers about their work, as {@code answers: {question: option, question: [options], question:
 * amount with unit, question: not-sure}}.
 */
public final class AnswersReader {
    private final Questionnaire questionnaire;

    /** Reads answers to these questions. */
    public AnswersReader(Questionnaire questionnaire) {
        this.questionnaire = questionnaire;
    }

    /** Reads a file; an amount beyond what the kiosk offers is taken with a warning. */
    public Reading<Answers> read(Path file) {
        return ShopperFile.read(file, "answers", this::answers);
    }

    private Answers answers(List<YamlNode.Entry> entries) {
        Map<QuestionId, Answer> answers = new TreeMap<>();
        List<String> known = questionnaire.questions().stream().map(each -> each.id().value()).toList();
        for (YamlNode.Entry entry : entries) {
            Optional<Question> question = questionnaire.questions().stream()
                    .filter(each -> each.id().value().equals(entry.key()))
                    .findFirst();
            if (question.isEmpty()) {
                entry.value().problems().error(entry.place(), "there is no question [" + entry.key() + "]",
                        Nearest.advice(entry.key(), known, "use one of " + String.join(", ", known)));
            } else {
                answer(question.get(), entry.value()).ifPresent(answer -> answers.put(question.get().id(), answer));
            }
        }
        var all = new Answers(answers);
        List<QuestionId> asked = questionnaire.applying(all).stream().map(Question::id).toList();
        entries.stream()
                .filter(entry -> known.contains(entry.key()) && !asked.contains(new QuestionId(entry.key())))
                .forEach(entry -> entry.value().problems().warning(entry.place(),
                        "with these answers nobody asks [" + entry.key() + "]",
                        "take it out, or answer the question it hangs on"));
        return all;
    }

    private static Optional<Answer> answer(Question question, YamlNode node) {
        if (node.isScalar() && node.text().equals(QuestionReader.NOT_SURE)) {
            return Optional.of(new Answer.NotSure());
        }
        return question.scale().isPresent()
                ? Optional.of(measured(question.scale().get(), node))
                : chosen(question, node);
    }

    private static Answer measured(Question.Scale scale, YamlNode node) {
        int before = node.problems().count();
        Amount amount = node.amount(scale.dimension());
        if (node.problems().count() == before) {
            if (amount.si() <= 0) {
                node.error("[" + node.text() + "] is not above nothing", "write an amount above 0");
            } else if (amount.si() < scale.from().si() || amount.si() > scale.to().si()) {
                node.warning("[" + node.text() + "] lies beyond what the kiosk offers", "check number and unit");
            }
        }
        return new Answer.Measured(amount);
    }

    private static Optional<Answer> chosen(Question question, YamlNode node) {
        List<String> known = question.options().stream().map(option -> option.id().value()).toList();
        List<OptionId> options = new ArrayList<>();
        List<YamlNode> picked = node.isList() ? node.list() : List.of(node);
        for (YamlNode each : picked) {
            String text = each.text();
            if (!known.contains(text)) {
                each.error("the question [" + question.id() + "] has no option [" + text + "]",
                        Nearest.advice(text, known, "use one of " + String.join(", ", known)));
            } else if (options.contains(new OptionId(text))) {
                each.error("[" + text + "] is picked twice", "delete one of them");
            } else {
                options.add(new OptionId(text));
            }
        }
        if (question.choose() == Question.Choose.ONE && picked.size() != 1) {
            node.error(picked.size() + " options are picked", "pick one, or write " + QuestionReader.NOT_SURE);
            return Optional.empty();
        }
        return Optional.of(new Answer.Chosen(options));
    }
}
