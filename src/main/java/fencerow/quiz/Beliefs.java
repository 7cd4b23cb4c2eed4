package fencerow.quiz;

import fencerow.terms.QuestionId;
import java.util.Collections;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/**
 * Everything the shopper answered in the quiz.
 *
 * @param byQuestion sorted by question
 */
public record Beliefs(Map<QuestionId, Belief> byQuestion) {
    /** Nothing answered yet. */
    public static final Beliefs NONE = new Beliefs(Map.of());

    /** Copies and sorts. */
    public Beliefs {
        byQuestion = Collections.unmodifiableMap(new TreeMap<>(byQuestion));
    }

    /** With one answer given or changed. */
    public Beliefs with(QuestionId question, Belief belief) {
        var next = new TreeMap<>(byQuestion);
        next.put(question, belief);
        return new Beliefs(next);
    }

    /** The answer to the question. */
    public Optional<Belief> find(QuestionId question) {
        return Optional.ofNullable(byQuestion.get(question));
    }
}
