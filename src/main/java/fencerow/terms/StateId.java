package fencerow.terms;

/**
 * Identifies a working state: what is mounted at once, such as {@code forks-on}.
 *
 * @param value lower-case words joined by hyphens
 */
public record StateId(String value) implements Comparable<StateId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public StateId {
        Slug.require("working state", value);
    }

    @Override
    public int compareTo(StateId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
