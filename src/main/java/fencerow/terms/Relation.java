package fencerow.terms;

/** On which side of its threshold a capability must stay. */
public enum Relation {
    AT_LEAST("at-least"),
    AT_MOST("at-most");

    private final String id;

    Relation(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
