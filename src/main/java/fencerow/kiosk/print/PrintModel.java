package fencerow.kiosk.print;

import java.util.List;

/** How printing stands. */
sealed interface PrintModel {
    /**
     * Not begun.
     *
     * @param further whether the further sheet is wanted too
     * @param saves   whether the list is saved rather than printed
     * @param heading of the paper
     * @param lines   of page one; empty until they are composed
     */
    record Ready(boolean further, boolean saves, String heading, List<String> lines) implements PrintModel {
        /** Copies the list. */
        public Ready {
            lines = List.copyOf(lines);
        }
    }

    /** Going on. */
    record Working(String words) implements PrintModel {}

    /** Done: what to say, and what to do with it. */
    record Done(String words, String what) implements PrintModel {}

    /** Not done: why, and what can be done. */
    record Failed(String words, String what) implements PrintModel {}
}
