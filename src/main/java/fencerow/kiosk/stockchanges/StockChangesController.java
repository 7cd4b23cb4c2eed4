package fencerow.kiosk.stockchanges;

import fencerow.desk.StockDesk;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import javafx.scene.Node;

/** Shows what was changed of late. */
public final class StockChangesController implements Screen {
    private static final String DESK = "stock-changes";

    private final Frame frame;
    private final StockChangesView view;

    /** Newest first. */
    public StockChangesController(Frame frame, StockDesk desk, Place.StaffChanges place) {
        this.frame = frame;
        this.view = new StockChangesView(frame, place.scroll());
        var interactor = new StockChangesInteractor(desk,
                new CellWords(desk, frame.premises().showroom().catalogue(), frame.phrases()));
        frame.backRoom().work(DESK, interactor::newest, view::show, frame::failed);
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("stockchanges.title");
    }

    @Override
    public Place place() {
        return new Place.StaffChanges(view.page().position());
    }
}
