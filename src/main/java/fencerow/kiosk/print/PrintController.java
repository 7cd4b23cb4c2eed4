package fencerow.kiosk.print;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.ListPrinter;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.visit.Visit;
import java.util.Set;
import javafx.scene.Node;

/** Prints the list, or saves it where there is no printer. */
public final class PrintController implements Screen, PrintTouches {
    private static final String PRINT = "print";

    private final Frame frame;
    private final PrintInteractor interactor;
    private final PrintView view;
    private final boolean saves;
    private boolean further;

    /** For the frame's visit. */
    public PrintController(Frame frame) {
        this.frame = frame;
        this.interactor = new PrintInteractor(frame.texts());
        this.view = new PrintView(frame, this);
        this.saves = frame.premises().settings().paper().printer().isEmpty();
        again();
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
                printed -> view.show(interactor.printed(printed)), failure -> view.show(interactor.broken()));
    }

    @Override
    public void again() {
        view.show(new PrintModel.Ready(further, saves));
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
