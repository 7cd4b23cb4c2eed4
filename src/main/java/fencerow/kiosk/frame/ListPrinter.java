package fencerow.kiosk.frame;

import fencerow.printing.PrintOutcome;
import fencerow.printing.PrinterTrouble;
import fencerow.visit.Visit;
import java.util.Optional;
import java.util.Set;

/** Puts a shopper's pages on paper, or into a file where there is no printer. Called in the background. */
public interface ListPrinter {
    /** What keeps the printer from printing now, or soon will; empty if nothing is known to. */
    Optional<PrinterTrouble> findTrouble();

    /**
     * Composes and prints pages of the visit.
     *
     * @param wanted which parts; never empty
     * @throws Exception if they cannot be composed; the screen then says so and offers to try again
     */
    Printed print(Visit visit, Comfort comfort, Set<Part> wanted) throws Exception;

    /** Composes pages as {@link #print} does and saves them for the desk, whatever the printer does. */
    Printed save(Visit visit, Comfort comfort, Set<Part> wanted) throws Exception;

    /** Prints a page that says nothing of anybody, for staff to try the printer. */
    Printed testPage(Comfort comfort) throws Exception;

    /** Prints for staff what nobody has checked on the units here, what visits of late hung on first. */
    Printed lotWalk(Comfort comfort) throws Exception;

    /** Prints for staff the visit's pinned units: plans, and what to verify. */
    Printed unitsSheet(Visit visit, Comfort comfort) throws Exception;

    /** How a job is doing. */
    PrintOutcome follow(PrintOutcome.Queued job);

    /** Takes a job back. */
    PrintOutcome cancel(PrintOutcome.Queued job);

    /** The shopper has left: a job that waits for someone to see to the printer is taken back. */
    void visitEnded();

    /**
     * How it went.
     *
     * @param pages how many pages there are; 0 if none were made
     */
    record Printed(PrintOutcome outcome, int pages) {}

    /** Parts of what can be printed. */
    enum Part {
        /** The list: lines of page one and the signs to walk away; and the comparison. */
        LIST("list"),
        /** The lines that found no room on page one, questions for the seller, hauling home. */
        FURTHER_SHEET("further"),
        /** What the shopper had wrong, explained. */
        EXPLANATIONS("explanations"),
        /** Whether the smallest and the least able driver can handle a tractor. */
        SIT_TEST("sit-test"),
        /** What to walk through on the day the tractor comes. */
        DELIVERY_DAY("delivery-day"),
        /** Care in the first year. */
        FIRST_YEAR("first-year");

        private final String id;

        Part(String id) {
            this.id = id;
        }

        /** The word used in text keys. */
        public String id() {
            return id;
        }
    }
}
