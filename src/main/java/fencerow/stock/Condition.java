package fencerow.stock;

/** How a machine comes to the lot. */
public enum Condition {
    NEW("new"),
    /** Shown to customers or rented by the dealer; its warranty clock already runs. */
    DEMONSTRATOR("demo"),
    USED("used");

    private final String id;

    Condition(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
