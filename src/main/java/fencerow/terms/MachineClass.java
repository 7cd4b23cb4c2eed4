package fencerow.terms;

/** Size classes of the trade, smallest first. */
public enum MachineClass {
    /** Roughly 15 to 26 engine hp on a garden-sized frame. */
    SUBCOMPACT("subcompact"),
    /** The smallest frame with full-size category 1 arms. */
    SMALL("small"),
    /** Mid-frame compact. */
    MID("mid"),
    /** Large-frame compact. */
    LARGE("large"),
    /** Utility tractor. */
    UTILITY("utility");

    private final String id;

    MachineClass(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
