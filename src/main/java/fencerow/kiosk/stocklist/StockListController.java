package fencerow.kiosk.stocklist;

import fencerow.desk.StockDesk;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Place.StaffUnits;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.stocklist.StockListInteractor.Listed;
import fencerow.terms.UnitId;
import java.util.List;
import javafx.scene.Node;

/** Lists the units, finds one while staff type, and leads to each. */
public final class StockListController implements Screen {
    private static final String DESK = "stock-list";

    private final Frame frame;
    private final StockListInteractor interactor;
    private final StockListView view;
    private List<Listed> all = List.of();
    private boolean loaded;
    private StaffUnits place;

    /** At a page. */
    public StockListController(Frame frame, StockDesk desk, StaffUnits place) {
        this.frame = frame;
        this.place = place;
        var words = new CellWords(desk, frame.premises().showroom().catalogue(), frame.phrases());
        this.interactor = new StockListInteractor(desk, frame.phrases(), words);
        this.view = new StockListView(frame, new Touches());
        view.arrange(place.typing());
        frame.backRoom().work(DESK, interactor::load, units -> {
            all = units;
            loaded = true;
            show();
        }, frame::failed);
    }

    private void show() {
        if (loaded) {
            view.show(interactor.page(all, place));
        }
    }

    private void at(StaffUnits next) {
        boolean rearrange = next.typing() != place.typing();
        place = next;
        if (rearrange) {
            view.arrange(place.typing());
        }
        show();
    }

    private final class Touches implements StockListView.Touches {
        @Override
        public String words() {
            return place.words();
        }

        @Override
        public void type(boolean typing) {
            at(new StaffUnits(place.which(), place.words(), typing, place.page()));
        }

        @Override
        public void words(String words) {
            at(new StaffUnits(place.which(), words, place.typing(), 0));
        }

        @Override
        public void which(StaffUnits.Which which) {
            at(new StaffUnits(which, place.words(), place.typing(), 0));
        }

        @Override
        public void turn(int pages) {
            at(new StaffUnits(place.which(), place.words(), place.typing(), place.page() + pages));
        }

        @Override
        public void open(UnitId unit) {
            frame.go(Place.StaffUnit.of(unit));
        }

        @Override
        public void add() {
            frame.go(Place.StaffAdd.FIRST);
        }
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("stocklist.title");
    }

    @Override
    public Place place() {
        return place;
    }
}
