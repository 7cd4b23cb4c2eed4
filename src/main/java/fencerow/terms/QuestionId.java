package fencerow.terms;

/**
 * Identifies a question of the needs questionnaire or of the quiz, such as {@code door-height}.
 *
 * @param value lower-case words joined by hyphens
 */
public record QuestionId(String value) implements Comparable<QuestionId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public QuestionId {
        Slug.require("question", value);
    }

    @Override
    public int compareTo(QuestionId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
