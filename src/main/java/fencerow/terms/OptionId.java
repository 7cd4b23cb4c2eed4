package fencerow.terms;

/**
 * Identifies one of the answers offered to a question, such as {@code not-steep}.
 *
 * @param value lower-case words joined by hyphens
 */
public record OptionId(String value) implements Comparable<OptionId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public OptionId {
        Slug.require("option", value);
    }

    @Override
    public int compareTo(OptionId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
