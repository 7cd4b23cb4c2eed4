package fencerow.kiosk.print;

/** How printing stands. */
sealed interface PrintModel {
    /**
     * Not begun.
     *
     * @param further whether the further sheet is wanted too
     * @param saves   whether the list is saved rather than printed
     */
    record Ready(boolean further, boolean saves) implements PrintModel {}

    /** Going on. */
    record Working(String words) implements PrintModel {}

    /** Done: what to say, and what to do with it. */
    record Done(String words, String what) implements PrintModel {}

    /** Not done: why, and what can be done. */
    record Failed(String words, String what) implements PrintModel {}
}
