package fencerow.kiosk.print;

import fencerow.kiosk.frame.ListPrinter;
import java.util.List;
import java.util.Optional;

/** How printing stands. */
sealed interface PrintModel {
    /**
     * Not begun.
     *
     * @param saves   whether pages are saved rather than printed
     * @param more    what can be had beside the list
     * @param heading of the paper
     * @param lines   of page one; empty until they are composed
     * @param notice  what the printer needs before it prints, or soon
     */
    record Ready(boolean saves, List<Extra> more, String heading, List<String> lines, Optional<String> notice)
            implements PrintModel {
        /** Copies the lists. */
        public Ready {
            more = List.copyOf(more);
            lines = List.copyOf(lines);
        }
    }

    /** Pages that can be had beside the list. */
    record Extra(ListPrinter.Part part, String words, String hint, boolean chosen) {}

    /** Going on: nothing to do but wait. */
    record Working(String words, String what) implements PrintModel {}

    /** The printer has the pages and waits for somebody to see to it. */
    record Waiting(String words, String what) implements PrintModel {}

    /** Done: what to say, and what to do with it. */
    record Done(String words, String what) implements PrintModel {}

    /**
     * Not done: why, and what can be done.
     *
     * @param canSave whether saving for the desk is a way out
     */
    record Failed(String words, String what, boolean canSave) implements PrintModel {}
}
