package fencerow.kiosk.frame;

import fencerow.visit.Visit;
import java.util.Set;

/** Puts a shopper's list on paper, or into a file where there is no printer. Called in the background. */
@FunctionalInterface
public interface ListPrinter {
    /**
     * Composes and prints the list of the visit.
     *
     * @param wanted which parts; never empty
     * @throws Exception if it cannot be printed; the screen then says so and offers to try again
     */
    Printed print(Visit visit, Comfort comfort, Set<Part> wanted) throws Exception;

    /** Parts of what can be printed. */
    enum Part {
        /** The list: lines of page one and the signs to walk away. */
        LIST,
        /** The lines that found no room on page one. */
        FURTHER_SHEET
    }

    /** How it went. */
    sealed interface Printed {
        /** It lies in the tray, or is about to. */
        record OnPaper(int pages) implements Printed {}

        /** There is no printer here: the desk has it under this name. */
        record Saved(String fileName, int pages) implements Printed {}

        /** The printer does not take it now. */
        record NotNow(Reason reason) implements Printed {}
    }

    /** Why a printer does not take a list. */
    enum Reason {
        /** No paper, a jam, a cover that is open. */
        PAPER("paper"),
        /** It does not answer. */
        SILENT("silent"),
        /** It refused. */
        REFUSED("refused");

        private final String id;

        Reason(String id) {
            this.id = id;
        }

        /** The word used in text keys. */
        public String id() {
            return id;
        }
    }
}
