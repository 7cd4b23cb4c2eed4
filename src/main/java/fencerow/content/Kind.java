package fencerow.content;

/** Kinds of records that have ids. */
public enum Kind {
    FEATURE("feature"),
    CAPABILITY("capability"),
    STATE("working state"),
    ADD_ON("add-on"),
    ATTACHMENT("attachment"),
    CONDITION("condition note"),
    JOB("job"),
    MODEL("model"),
    UNIT("unit"),
    QUESTION("question"),
    /** Spelt {@code question/option}. */
    OPTION("option"),
    QUIZ("quiz question"),
    LINE("checklist line"),
    TOPIC("explainer"),
    CALCULATION("calculation"),
    WORD("glossary word"),
    CAUTION("caution"),
    PICTURE("picture");

    private final String word;

    Kind(String word) {
        this.word = word;
    }

    /** What a person calls it. */
    public String word() {
        return word;
    }
}
