package fencerow;

import fencerow.backoffice.PrintShop;
import fencerow.desk.Settings.PaperSettings;
import fencerow.desk.Tally;
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
import fencerow.printing.WorkingPaper;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.function.Supplier;

/** Puts a visit on paper for the kiosk: what the print shop sets, and the showroom's printer. For any thread. */
final class KioskPrinter implements ListPrinter {
    private final PrintShop shop;
    private final Printer printer;
    private final Printer folder;
    private final Clock clock;
    private final Supplier<Tally> counts;
    private final State state;

    /** What is counted and waited for, whichever content and stock is printed from. */
    private static final class State {
        private Copies copies;
        private Optional<PrintOutcome.Queued> open = Optional.empty();

        State(Copies copies) {
            this.copies = copies;
        }
    }

    /**
     * Prints what the shop sets.
     *
     * @param settings which printer, how much of it, and where files go where there is none
     * @param data     the folder that the one for files is below, unless that is given from the root
     * @param clock    names the files, and counts the copies of an hour
     * @param before   the printer of older content, whose copies go on counting
     */
    KioskPrinter(PrintShop shop, PaperSettings settings, Path data, Clock clock, Optional<KioskPrinter> before) {
        Path saved = data.resolve(settings.saveFolder());
        this.shop = shop;
        this.printer = Printer.of(settings.printer(), saved, clock);
        this.folder = Printer.of(Optional.empty(), saved, clock);
        this.clock = clock;
        this.counts = () -> Tally.NONE;
        this.state = before.map(older -> older.state).orElseGet(() -> new State(Copies.none(1, 1)));
        synchronized (state) {
            state.copies = state.copies.under(settings.perVisit(), settings.perHour());
        }
    }

    private KioskPrinter(KioskPrinter other, Showroom showroom, Supplier<Tally> counts) {
        this.shop = other.shop.with(showroom);
        this.printer = other.printer;
        this.folder = other.folder;
        this.clock = other.clock;
        this.counts = counts;
        this.state = other.state;
    }

    /**
     * The same printer with another stock on its pages.
     *
     * @param counts of visits of late
     */
    KioskPrinter with(Showroom showroom, Supplier<Tally> counts) {
        return new KioskPrinter(this, showroom, counts);
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

    /** For staff, and so for nobody's share of copies. */
    @Override
    public Printed lotWalk(Comfort comfort) {
        return paper(phrases -> WorkingPaper.lotWalk(shop.showroom(), counts.get(), phrases), comfort);
    }

    /** Can be asked for without the PIN, so it counts as the visit's. */
    @Override
    public Printed unitsSheet(Visit visit, Comfort comfort) {
        Optional<PrintOutcome.TooMany> refusal = refusal();
        if (refusal.isPresent()) {
            return new Printed(refusal.get(), 0);
        }
        Printed printed = paper(phrases -> WorkingPaper.unitsSheet(shop.showroom(), visit, phrases), comfort);
        return new Printed(count(printed.outcome()), printed.pages());
    }

    private Printed paper(Function<Phrases, WorkingPaper> work, Comfort comfort) {
        PageFormat format = shop.format(false);
        Printout pages = shop.print(work, comfort.language(), comfort.metric(), format);
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

    private Optional<PrintOutcome.TooMany> refusal() {
        synchronized (state) {
            return state.copies.findRefusal(clock.instant());
        }
    }

    private PrintOutcome count(PrintOutcome outcome) {
        if (outcome.isDone() || outcome instanceof PrintOutcome.Queued) {
            synchronized (state) {
                state.copies = state.copies.with(clock.instant());
            }
        }
        return noted(outcome);
    }

    private PrintOutcome noted(PrintOutcome outcome) {
        synchronized (state) {
            state.open = outcome instanceof PrintOutcome.Queued queued ? Optional.of(queued) : Optional.empty();
        }
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

    private Optional<PrintOutcome.Queued> leaveNothing() {
        synchronized (state) {
            state.copies = state.copies.newVisit();
            Optional<PrintOutcome.Queued> left = state.open;
            state.open = Optional.empty();
            return left;
        }
    }
}
