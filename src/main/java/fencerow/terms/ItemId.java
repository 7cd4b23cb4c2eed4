package fencerow.terms;

/**
 * Identifies a thing that can be put on a tractor: an add-on or an attachment, such as {@code pallet-forks}.
 *
 * @param value lower-case words joined by hyphens
 */
public record ItemId(String value) implements Comparable<ItemId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public ItemId {
        Slug.require("item", value);
    }

    @Override
    public int compareTo(ItemId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
