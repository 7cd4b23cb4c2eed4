package fencerow.terms;

/**
 * Identifies a tractor model, such as {@code bramble-1820h}.
 *
 * @param value lower-case words joined by hyphens
 */
public record ModelId(String value) implements Comparable<ModelId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public ModelId {
        Slug.require("model", value);
    }

    @Override
    public int compareTo(ModelId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
