package fencerow;

import fencerow.backoffice.PrintShop;
import fencerow.desk.Settings.PaperSettings;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.kit.TextSize;
import fencerow.printing.Copies;
import fencerow.printing.PageFormat;
import fencerow.printing.PrintOutcome;
import fencerow.printing.Printer;
import fencerow.printing.PrinterTrouble;
import fencerow.printing.Printout;
import fencerow.printing.Sheet;
import fencerow.visit.Visit;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Puts a visit on paper for the kiosk: what the print shop sets, and the showroom's printer. For any thread. */
final class KioskPrinter implements ListPrinter {
    private final PrintShop shop;
    private final Printer printer;
    private final Printer folder;
    private final Clock clock;
    private Copies copies;
    private Optional<PrintOutcome.Queued> open = Optional.empty();

    /**
     * Prints what the shop sets.
     *
     * @param settings which printer, how much of it, and where files go where there is none
     * @param data     the folder that the one for files is below, unless that is given from the root
     * @param clock    names the files, and counts the copies of an hour
     */
    KioskPrinter(PrintShop shop, PaperSettings settings, Path data, Clock clock) {
        Path saved = data.resolve(settings.saveFolder());
        this.shop = shop;
        this.printer = Printer.of(settings.printer(), saved, clock);
        this.folder = Printer.of(Optional.empty(), saved, clock);
        this.clock = clock;
        this.copies = Copies.none(settings.perVisit(), settings.perHour());
    }

    @Override
    public Optional<PrinterTrouble> findTrouble() {
        return printer.findTrouble();
    }

    @Override
    public Printed print(Visit visit, Comfort comfort, Set<Part> wanted) {
        return put(printer, visit, comfort, sheets(wanted));
    }

    @Override
    public Printed save(Visit visit, Comfort comfort, Set<Part> wanted) {
        return put(folder, visit, comfort, sheets(wanted));
    }

    /** Staff's own pages count for nobody. */
    @Override
    public Printed testPage(Comfort comfort) {
        PageFormat format = format(comfort);
        Printout pages =
                shop.print(Visit.NEW, comfort.language(), comfort.metric(), format, List.of(Sheet.TEST_PAGE));
        return new Printed(printer.print(pages, format, 1), pages.pages());
    }

    private Printed put(Printer where, Visit visit, Comfort comfort, List<Sheet> sheets) {
        Optional<PrintOutcome.TooMany> refusal = refusal();
        if (refusal.isPresent()) {
            return new Printed(refusal.get(), 0);
        }
        PageFormat format = format(comfort);
        Printout pages = shop.print(visit, comfort.language(), comfort.metric(), format, sheets);
        return new Printed(count(where.print(pages, format, 1)), pages.pages());
    }

    private PageFormat format(Comfort comfort) {
        return shop.format(comfort.textSize() == TextSize.DOUBLE);
    }

    private static List<Sheet> sheets(Set<Part> wanted) {
        return Arrays.stream(Part.values())
                .filter(wanted::contains)
                .flatMap(part -> sheets(part).stream())
                .toList();
    }

    private static List<Sheet> sheets(Part part) {
        return switch (part) {
            case LIST -> List.of(Sheet.LIST, Sheet.COMPARISON);
            case FURTHER_SHEET -> List.of(Sheet.FURTHER_LINES, Sheet.QUESTIONS, Sheet.HAULING);
            case EXPLANATIONS -> List.of(Sheet.EXPLANATIONS);
            case SIT_TEST -> List.of(Sheet.SIT_TEST);
            case DELIVERY_DAY -> List.of(Sheet.DELIVERY_DAY);
            case FIRST_YEAR -> List.of(Sheet.FIRST_YEAR);
        };
    }

    private synchronized Optional<PrintOutcome.TooMany> refusal() {
        return copies.findRefusal(clock.instant());
    }

    private synchronized PrintOutcome count(PrintOutcome outcome) {
        if (outcome.isDone() || outcome instanceof PrintOutcome.Queued) {
            copies = copies.with(clock.instant());
        }
        return noted(outcome);
    }

    private synchronized PrintOutcome noted(PrintOutcome outcome) {
        open = outcome instanceof PrintOutcome.Queued queued ? Optional.of(queued) : Optional.empty();
        return outcome;
    }

    @Override
    public PrintOutcome follow(PrintOutcome.Queued job) {
        return noted(printer.follow(job));
    }

    @Override
    public PrintOutcome cancel(PrintOutcome.Queued job) {
        return noted(printer.cancel(job));
    }

    @Override
    public void visitEnded() {
        folder.tidyUp();
        leaveNothing().map(printer::follow)
                .filter(outcome -> outcome instanceof PrintOutcome.Queued job
                        && job.waitsFor().filter(PrinterTrouble::stops).isPresent())
                .ifPresent(outcome -> printer.cancel((PrintOutcome.Queued) outcome));
    }

    private synchronized Optional<PrintOutcome.Queued> leaveNothing() {
        copies = copies.newVisit();
        Optional<PrintOutcome.Queued> left = open;
        open = Optional.empty();
        return left;
    }
}
