package fencerow.sizing;

/** How far a source can be leaned on. */
public enum Standing {
    /** The figure was read in the named publication. */
    PUBLISHED("published"),
    /** The figure was recalled from the named standard or handbook, not read. */
    FROM_MEMORY("from-memory"),
    /** Common practice, no source. */
    COMMON_PRACTICE("common-practice"),
    /** Plain arithmetic, geometry or statics. */
    ARITHMETIC("arithmetic");

    private final String id;

    Standing(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
