package fencerow.kiosk;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.printing.PrintOutcome;
import fencerow.printing.PrinterTrouble;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.util.Optional;
import java.util.Set;

/**
 * A printer on which everything goes as was said beforehand.
 *
 * @param outcome of every printout; a job stays in it however often it is looked at
 */
public record ScriptedPrinter(PrintOutcome outcome) implements ListPrinter {
    /** How every page saved is called. */
    public static final String FILE = "list-7.pdf";

    private static final int PAGES = 2;

    @Override
    public Optional<PrinterTrouble> findTrouble() {
        return outcome instanceof PrintOutcome.Failed failed ? Optional.of(failed.trouble()) : Optional.empty();
    }

    @Override
    public Printed print(Visit visit, Comfort comfort, Set<Part> wanted) {
        return new Printed(outcome, PAGES);
    }

    @Override
    public Printed save(Visit visit, Comfort comfort, Set<Part> wanted) {
        return new Printed(new PrintOutcome.Saved(Path.of(FILE)), PAGES);
    }

    @Override
    public Printed testPage(Comfort comfort) {
        return new Printed(outcome, 1);
    }

    @Override
    public Printed lotWalk(Comfort comfort) {
        return new Printed(outcome, 1);
    }

    @Override
    public Printed unitsSheet(Visit visit, Comfort comfort) {
        return new Printed(outcome, 1);
    }

    @Override
    public PrintOutcome follow(PrintOutcome.Queued job) {
        return outcome;
    }

    @Override
    public PrintOutcome cancel(PrintOutcome.Queued job) {
        return new PrintOutcome.Failed(PrinterTrouble.CANCELLED);
    }

    @Override
    public void visitEnded() {
        // Keeps nothing.
    }
}
