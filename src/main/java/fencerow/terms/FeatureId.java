package fencerow.terms;

/**
 * Identifies a feature, such as {@code rear-remotes}.
 *
 * @param value lower-case words joined by hyphens
 */
public record FeatureId(String value) implements Comparable<FeatureId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public FeatureId {
        Slug.require("feature", value);
    }

    @Override
    public int compareTo(FeatureId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
