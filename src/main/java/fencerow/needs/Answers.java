package fencerow.needs;

import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Everything answered so far. The order in which questions were answered makes no difference.
 *
 * @param byQuestion the answers, sorted by question
 */
public record Answers(Map<QuestionId, Answer> byQuestion) {
    /** Nothing answered yet. */
    public static final Answers NONE = new Answers(Map.of());

    /** Copies and sorts. */
    public Answers {
        byQuestion = Collections.unmodifiableMap(new TreeMap<>(byQuestion));
    }

    /** With one answer given or changed; all others stay. */
    public Answers with(QuestionId question, Answer answer) {
        var next = new TreeMap<>(byQuestion);
        next.put(question, answer);
        return new Answers(next);
    }

    /** With one answer taken back. */
    public Answers without(QuestionId question) {
        var next = new TreeMap<>(byQuestion);
        next.remove(question);
        return new Answers(next);
    }

    /** The answer to the question. */
    public Optional<Answer> find(QuestionId question) {
        return Optional.ofNullable(byQuestion.get(question));
    }

    /** The options picked for the question; none if it was not answered by picking. */
    public List<OptionId> chosen(QuestionId question) {
        return find(question)
                .filter(Answer.Chosen.class::isInstance)
                .map(answer -> ((Answer.Chosen) answer).options())
                .orElse(List.of());
    }
}
