package fencerow.kiosk.stockrow;

import fencerow.desk.Sale;
import fencerow.desk.StockColumn;
import fencerow.desk.StockDesk;
import fencerow.desk.StockEntry;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.bookkeeping.Clerk;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.frame.UnitPictures;
import fencerow.terms.UnitId;
import java.time.LocalDate;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;

/** Changes one unit, a field at a time. */
public final class StockRowController implements Screen, StockRowTouches {
    private static final String DESK = "stock-row";
    private static final String PICTURE = "stock-picture";

    private final Frame frame;
    private final StockDesk desk;
    private final UnitId unit;
    private final CellWords words;
    private final StockRowView view;
    private StockRowInteractor interactor;
    private Optional<Clerk> clerk = Optional.empty();
    /** What is to be kept together with the next field, because the one needs the other. */
    private Map<String, String> pending = Map.of();

    /** At a unit. */
    public StockRowController(Frame frame, StockDesk desk, Place.StaffUnit place) {
        this.frame = frame;
        this.desk = desk;
        this.unit = place.unit();
        this.words = new CellWords(desk, frame.premises().showroom().catalogue(), frame.phrases());
        this.interactor = new StockRowInteractor(desk, words, List.of());
        this.view = new StockRowView(frame, place.scroll(), this);
        UnitPictures pictures = frame.premises().pictures();
        frame.backRoom().work(DESK, () -> new Loaded(desk.book().find(unit), pictures.names()), this::show,
                frame::failed);
    }

    private record Loaded(Optional<StockEntry> entry, List<String> pictures) {}

    private void show(Loaded loaded) {
        interactor = new StockRowInteractor(desk, words, loaded.pictures());
        if (loaded.entry().isEmpty()) {
            view.showGone();
            return;
        }
        clerk = Optional.of(new Clerk(frame, desk, words, loaded.entry().get(), new Clerk.Told() {
            @Override
            public void now(StockEntry now) {
                pending = Map.of();
                frame.lift();
                show(now);
            }

            @Override
            public void wrong(Map<String, String> cells, Set<String> columns) {
                putRight(cells, columns);
            }
        }));
        show(loaded.entry().get());
    }

    private void show(StockEntry entry) {
        view.show(interactor.model(entry));
    }

    /** Says what is wrong at the field itself, or asks for the further field that it needs. */
    private void putRight(Map<String, String> cells, Set<String> columns) {
        Optional<String> own = columns.stream().filter(cells::containsKey).findFirst();
        own.or(() -> columns.stream().findFirst()).flatMap(words::findColumn).ifPresent(column -> {
            pending = new HashMap<>(cells);
            String note = own.isPresent() ? interactor.wrong(column) : interactor.needed(column);
            String text = cells.containsKey(column.id()) ? cells.get(column.id()) : written(column);
            view.lay(interactor.editing(column, text, Optional.of(note)));
        });
    }

    private String written(StockColumn column) {
        return clerk.flatMap(each -> each.entry().row().find(column.id())).orElse("");
    }

    @Override
    public void edit(StockColumn column) {
        pending = Map.of();
        view.lay(interactor.editing(column, written(column), Optional.empty()));
    }

    @Override
    public void draft(StockColumn column, String text) {
        view.lay(interactor.editing(column, text, Optional.empty()));
    }

    @Override
    public void keep(StockColumn column, String text) {
        Map<String, String> cells = new HashMap<>(pending);
        cells.put(column.id(), text);
        if (column.kind() != StockColumn.Kind.PICTURE || text.isBlank()) {
            clerk.ifPresent(each -> each.write(cells));
            return;
        }
        UnitPictures pictures = frame.premises().pictures();
        frame.backRoom().work(PICTURE, () -> pictures.findFault(text), fault -> {
            if (fault.isPresent()) {
                view.lay(interactor.editing(column, text,
                        Optional.of(frame.say("stockrow.picture." + fault.get(), Map.of("name", text)))));
            } else {
                clerk.ifPresent(each -> each.write(cells));
            }
        }, frame::failed);
    }

    @Override
    public void hold() {
        view.layDays(interactor.holdDays());
    }

    @Override
    public void holdUntil(LocalDate day) {
        frame.lift();
        clerk.ifPresent(each -> each.sell(new Sale.Held(day)));
    }

    @Override
    public void sell() {
        clerk.ifPresent(each -> each.sell(new Sale.Sold(desk.today())));
    }

    @Override
    public void release() {
        clerk.ifPresent(each -> each.sell(Sale.open()));
    }

    @Override
    public void verify() {
        frame.go(new Place.StaffVerify(unit, 0));
    }

    @Override
    public void list() {
        frame.go(Place.StaffUnits.ALL);
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("stockrow.title");
    }

    @Override
    public Place place() {
        return new Place.StaffUnit(unit, view.page().position());
    }
}
