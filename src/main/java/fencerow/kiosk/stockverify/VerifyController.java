package fencerow.kiosk.stockverify;

import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.bookkeeping.Clerk;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.terms.UnitId;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;

/** Takes down what staff see while they walk around a unit. */
public final class VerifyController implements Screen {
    private static final String DESK = "stock-verify";

    private final Frame frame;
    private final StockDesk desk;
    private final UnitId unit;
    private final CellWords words;
    private final VerifyInteractor interactor;
    private final VerifyView view;
    private final Set<String> wrong = new HashSet<>();
    private List<String> asked = List.of();
    private Optional<Clerk> clerk = Optional.empty();

    /** At a unit. */
    public VerifyController(Frame frame, StockDesk desk, Place.StaffVerify place) {
        this.frame = frame;
        this.desk = desk;
        this.unit = place.unit();
        this.words = new CellWords(desk, frame.premises().showroom().catalogue(), frame.phrases());
        this.interactor = new VerifyInteractor(desk, words);
        this.view = new VerifyView(frame, place.scroll(), this::answer, frame::back);
        frame.backRoom().work(DESK, () -> desk.book().find(unit), this::begin, frame::failed);
    }

    private void begin(Optional<StockEntry> found) {
        if (found.isEmpty()) {
            view.showGone();
            return;
        }
        asked = interactor.unknown(found.get());
        clerk = Optional.of(new Clerk(frame, desk, words, found.get(), new Clerk.Told() {
            @Override
            public void now(StockEntry now) {
                view.show(interactor.model(now, asked, wrong));
            }

            @Override
            public void wrong(Map<String, String> cells, Set<String> columns) {
                wrong.addAll(cells.keySet());
                clerk.ifPresent(each -> view.show(interactor.model(each.entry(), asked, wrong)));
            }
        }));
        view.show(interactor.model(found.get(), asked, wrong));
    }

    private void answer(String column, String text) {
        wrong.remove(column);
        clerk.ifPresent(each -> each.write(Map.of(column, text)));
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("stockverify.title");
    }

    @Override
    public Place place() {
        return new Place.StaffVerify(unit, view.page().position());
    }
}
