package fencerow.match;

/** What one unit comes to for one shopper, best to worst. */
public enum Verdict {
    /** As it stands. */
    READY("ready"),
    /** With add-ons and attachments fitted or bought. */
    READY_ONCE_EQUIPPED("ready-once-equipped"),
    /** Not as known, but some outcome of equipment nobody has checked could. */
    LOOK_CLOSER("look-closer"),
    /** Only as a factory order. */
    TO_ORDER("to-order"),
    /** Not at all. */
    CANNOT_BE_MADE_READY("cannot-be-made-ready");

    private final String id;

    Verdict(String id) {
        this.id = id;
    }

    /** The word used in documents and text keys. */
    public String id() {
        return id;
    }

    /** Whether there is a plan and so a ready-to-work price. */
    public boolean hasPlan() {
        return this == READY || this == READY_ONCE_EQUIPPED || this == TO_ORDER;
    }
}
