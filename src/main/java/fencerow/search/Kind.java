package fencerow.search;

/** What a hit is. */
public enum Kind {
    /** An explainer on one topic. */
    EXPLAINER("explainer"),
    /** A word of the trade in plain words. */
    WORD("word"),
    /** Work a shopper may want done. */
    JOB("job"),
    /** A tool that does jobs. */
    ATTACHMENT("attachment"),
    /** A machine in stock, in transit or orderable. */
    UNIT("unit"),
    /** A question of the quiz. */
    QUIZ("quiz"),
    /** A calculation the shopper can do. */
    CALCULATION("calculation");

    private final String id;

    Kind(String id) {
        this.id = id;
    }

    /** The word used in files, JSON and text keys. */
    public String id() {
        return id;
    }
}
