package fencerow.terms;

/**
 * Identifies a job to be done, such as {@code clear-snow}.
 *
 * @param value lower-case words joined by hyphens
 */
public record JobId(String value) implements Comparable<JobId> {
    /** @throws IllegalArgumentException if the spelling is not that of an id */
    public JobId {
        Slug.require("job", value);
    }

    @Override
    public int compareTo(JobId other) {
        return value.compareTo(other.value);
    }

    @Override
    public String toString() {
        return value;
    }
}
