package fencerow.kiosk.print;

import fencerow.desk.Counter;
import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.visit.Visit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;

/** Prints the list, or saves it where there is no printer. */
public final class PrintController implements Screen, PrintTouches {
    private static final System.Logger LOG = System.getLogger(PrintController.class.getName());
    private static final String PRINT = "print";

    private final Frame frame;
    private final PrintInteractor interactor;
    private final PrintView view;
    private final boolean saves;
    private boolean further;
    private List<String> lines = List.of();

    /** For the frame's visit. */
    public PrintController(Frame frame) {
        this.frame = frame;
        this.interactor = new PrintInteractor(frame.premises().showroom(), frame.texts());
        this.view = new PrintView(frame, this);
        this.saves = frame.premises().settings().paper().printer().isEmpty();
        again();
        frame.follow(frame.outlook(), this::tell);
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> {
            lines = interactor.lines(known);
            again();
        });
    }

    @Override
    public void further() {
        further = !further;
        again();
    }

    @Override
    public void print() {
        view.show(interactor.working(saves));
        Visit visit = frame.visit().get();
        Comfort comfort = frame.comfort();
        ListPrinter printer = frame.premises().printer();
        Set<ListPrinter.Part> parts = PrintInteractor.parts(further);
        frame.backRoom().work(PRINT, () -> printer.print(visit, comfort, parts),
                this::printed, this::failed);
    }

    /** Writes down what kind of failure it was, without a word of the shopper's. */
    private void printed(ListPrinter.Printed printed) {
        if (!(printed instanceof ListPrinter.Printed.NotNow)) {
            frame.counts().count(Counter.of(Counter.Kind.PRINTED, ""));
        }
        view.show(interactor.printed(printed));
    }

    private void failed(Throwable failure) {
        LOG.log(System.Logger.Level.ERROR, "a list could not be printed: " + failure.getClass().getName());
        view.show(interactor.broken());
    }

    @Override
    public void again() {
        view.show(interactor.ready(further, saves, lines));
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
