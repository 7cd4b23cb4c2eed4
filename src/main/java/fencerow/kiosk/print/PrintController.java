package fencerow.kiosk.print;

import fencerow.desk.Counter;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.ListPrinter.Printed;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.printing.PrintOutcome;
import fencerow.printing.PrinterTrouble;
import fencerow.visit.ReturnCode;
import fencerow.visit.Visit;
import java.util.EnumSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.Callable;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.util.Duration;

/** Prints the list, or saves it where there is no printer, and follows it until it is in the tray. */
public final class PrintController implements Screen, PrintTouches {
    private static final System.Logger LOG = System.getLogger(PrintController.class.getName());
    private static final String PRINT = "print";
    private static final String STATE = "printer-state";
    private static final String CODE = "come-back";
    private static final Duration BETWEEN_LOOKS = Duration.millis(700);

    private final Frame frame;
    private final ListPrinter printer;
    private final boolean saves;
    private final PrintInteractor interactor;
    private final PrintView view;
    private final PauseTransition nextLook = new PauseTransition(BETWEEN_LOOKS);
    private final Set<ListPrinter.Part> extras = EnumSet.noneOf(ListPrinter.Part.class);
    private Optional<PrinterTrouble> trouble = Optional.empty();
    private Optional<PrintOutcome.Queued> job = Optional.empty();
    private int pages;
    private boolean begun;
    private List<String> lines = List.of();
    private PrintModel shown;
    private boolean printed;
    private Optional<CodeCard> noCode = Optional.empty();

    /** For the frame's visit. */
    public PrintController(Frame frame) {
        this.saves = frame.premises().settings().paper().printer().isEmpty();
        this.frame = frame;
        this.printer = frame.premises().printer();
        this.interactor = new PrintInteractor(frame.premises().showroom(), frame.texts(), saves);
        this.view = new PrintView(frame, this);
        this.shown = interactor.ready(frame.visit().get(), extras, lines, trouble);
        nextLook.setOnFinished(event -> look());
        again();
        frame.follow(frame.outlook(), this::tell);
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> {
            lines = interactor.lines(known);
            showReady();
        });
    }

    private void showReady() {
        if (!begun) {
            show(interactor.ready(frame.visit().get(), extras, lines, trouble));
        }
    }

    private void show(PrintModel model) {
        shown = model;
        view.show(model, frame.premises().comeBack().map(comeBack ->
                noCode.orElseGet(() -> interactor.code(frame.visit().get(), comeBack.days(), printed))));
    }

    @Override
    public void makeCode() {
        Visit visit = frame.visit().get();
        frame.premises().comeBack().ifPresent(comeBack ->
                frame.backRoom().work(CODE, () -> comeBack.keep(visit), this::made, failure -> {
                    note("a visit could not be kept", failure);
                    noCode = Optional.of(interactor.noCode(false));
                    show(shown);
                }));
    }

    private void made(Optional<ReturnCode> code) {
        code.ifPresentOrElse(
                made -> frame.change(visit -> visit.kept(made)),
                () -> noCode = Optional.of(interactor.noCode(true)));
        show(shown);
    }

    @Override
    public void wanted(ListPrinter.Part part) {
        if (!extras.remove(part)) {
            extras.add(part);
        }
        showReady();
    }

    @Override
    public void print() {
        begin(interactor.working(saves), printer::print);
    }

    @Override
    public void save() {
        job.ifPresent(waiting -> frame.backRoom().work(STATE, () -> printer.cancel(waiting), outcome -> { },
                this::failed));
        begin(interactor.working(true), printer::save);
    }

    private interface Way {
        Printed put(Visit visit, Comfort comfort, Set<ListPrinter.Part> parts) throws Exception;
    }

    private void begin(PrintModel working, Way way) {
        begun = true;
        printed = frame.visit().get().code().isEmpty();
        job = Optional.empty();
        nextLook.stop();
        show(working);
        Visit visit = frame.visit().get();
        Comfort comfort = frame.comfort();
        Set<ListPrinter.Part> parts = PrintInteractor.parts(extras);
        work(() -> way.put(visit, comfort, parts));
    }

    private void work(Callable<Printed> work) {
        frame.backRoom().work(PRINT, work, this::done, this::failed);
    }

    private void done(Printed made) {
        pages = made.pages();
        if (made.outcome() instanceof PrintOutcome.Printed || made.outcome() instanceof PrintOutcome.Saved) {
            frame.counts().count(Counter.of(Counter.Kind.PRINTED, ""));
        }
        job = Optional.of(made.outcome())
                .filter(PrintOutcome.Queued.class::isInstance)
                .map(PrintOutcome.Queued.class::cast);
        show(interactor.printed(made));
        if (job.isPresent()) {
            nextLook.playFromStart();
        }
    }

    private void look() {
        int known = pages;
        job.ifPresent(queued -> work(() -> new Printed(printer.follow(queued), known)));
    }

    @Override
    public void takeBack() {
        nextLook.stop();
        int known = pages;
        job.ifPresent(queued -> work(() -> new Printed(printer.cancel(queued), known)));
    }

    /** Writes down what kind of failure it was, without a word of the shopper's. */
    private void failed(Throwable failure) {
        note("a list could not be printed", failure);
        job = Optional.empty();
        show(interactor.broken());
    }

    private static void note(String what, Throwable failure) {
        LOG.log(System.Logger.Level.ERROR, what + ": " + failure.getClass().getName());
    }

    @Override
    public void again() {
        begun = false;
        printed = false;
        job = Optional.empty();
        showReady();
        frame.backRoom().work(STATE, printer::findTrouble, found -> {
            trouble = found;
            showReady();
        }, this::failed);
    }

    @Override
    public void list() {
        frame.go(Place.ListPreview.TOP);
    }

    @Override
    public void results() {
        frame.go(Place.Results.TOP);
    }

    @Override
    public void finish() {
        frame.startOver(new Place.Attract());
    }

    @Override
    public void left() {
        nextLook.stop();
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("print.title");
    }

    @Override
    public Place place() {
        return new Place.Print();
    }
}
