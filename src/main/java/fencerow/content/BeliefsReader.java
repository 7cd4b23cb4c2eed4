package fencerow.content;

import fencerow.quiz.Belief;
import fencerow.quiz.Beliefs;
import fencerow.quiz.Quiz;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Reads a shopper's answers to the quiz, as {@code beliefs: {question: option, question: not-sure, question: {option:
 * option, sure: true}}}.
 */
public final class BeliefsReader {
    private final Quiz quiz;

    /** Reads answers to this quiz. */
    public BeliefsReader(Quiz quiz) {
        this.quiz = quiz;
    }

    /** Reads a file. */
    public Reading<Beliefs> read(Path file) {
        return ShopperFile.read(file, "beliefs", this::beliefs);
    }

    private Beliefs beliefs(List<YamlNode.Entry> entries) {
        Map<QuestionId, Belief> beliefs = new TreeMap<>();
        List<String> known = quiz.questions().stream().map(each -> each.id().value()).toList();
        for (YamlNode.Entry entry : entries) {
            Optional<QuizQuestion> question = quiz.questions().stream()
                    .filter(each -> each.id().value().equals(entry.key()))
                    .findFirst();
            if (question.isEmpty()) {
                entry.value().problems().error(entry.place(), "there is no quiz question [" + entry.key() + "]",
                        Nearest.advice(entry.key(), known, "use the id of a feature or of a question of the quiz"));
            } else {
                beliefs.put(question.get().id(), belief(question.get(), entry.value()));
            }
        }
        return new Beliefs(beliefs);
    }

    private static Belief belief(QuizQuestion question, YamlNode node) {
        if (node.isMap()) {
            YamlMap map = node.map("option", "sure");
            return new Belief(map.need("option").flatMap(each -> option(question, each)), map.flag("sure"));
        }
        if (node.isScalar() && node.text().equals(QuestionReader.NOT_SURE)) {
            return Belief.NOT_SURE;
        }
        return option(question, node).map(Belief::of).orElse(Belief.NOT_SURE);
    }

    private static Optional<OptionId> option(QuizQuestion question, YamlNode node) {
        String text = node.text();
        List<String> known = question.options().stream().map(OptionId::value).toList();
        if (known.contains(text)) {
            return Optional.of(new OptionId(text));
        }
        node.error("the quiz question [" + question.id() + "] has no option [" + text + "]",
                Nearest.advice(text, known, "use one of " + String.join(", ", known)));
        return Optional.empty();
    }
}
