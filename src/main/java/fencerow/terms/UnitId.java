package fencerow.terms;

/**
 * Identifies one machine in stock, in transit or orderable, such as {@code fr-1004}.
 *
 * @param value lower-case words joined by hyphens
 */
public record UnitId(String value) implements Comparable<UnitId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public UnitId {
        Slug.require("unit", value);
    }

    @Override
    public int compareTo(UnitId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
