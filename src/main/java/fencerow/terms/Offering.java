package fencerow.terms;

/** How a feature is offered on a machine class or on a model. */
public enum Offering {
    /** Comes with every one. */
    INCLUDED("included"),
    /** Usually there, yet not always: look. */
    COMMON("common"),
    /** Costs extra; can be put on later. */
    EXTRA("extra"),
    /** Only from the factory, chosen when the tractor is ordered. */
    FACTORY_ONLY("factory-only"),
    /** Cannot be had at all. */
    NEVER("never"),
    /** Differs from model to model: ask. */
    VARIES("varies");

    private final String id;

    Offering(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
