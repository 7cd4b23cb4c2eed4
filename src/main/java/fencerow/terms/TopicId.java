package fencerow.terms;

/**
 * Identifies an explainer's topic; a feature's topic has the feature's id, such as {@code quick-attach}.
 *
 * @param value lower-case words joined by hyphens
 */
public record TopicId(String value) implements Comparable<TopicId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public TopicId {
        Slug.require("topic", value);
    }

    @Override
    public int compareTo(TopicId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
