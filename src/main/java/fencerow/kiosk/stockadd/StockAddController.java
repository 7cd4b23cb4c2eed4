package fencerow.kiosk.stockadd;

import fencerow.desk.Edit;
import fencerow.desk.StockChange;
import fencerow.desk.StockDesk;
import fencerow.kiosk.bookkeeping.CellWords;
import fencerow.kiosk.bookkeeping.Clerk;
import fencerow.kiosk.bookkeeping.Typed;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Place.StaffAdd;
import fencerow.kiosk.frame.Screen;
import fencerow.terms.UnitId;
import java.util.Optional;
import javafx.scene.Node;

/** Adds a unit in three steps. */
public final class StockAddController implements Screen, StockAddView.Touches {
    private static final String LOOK = "stock-id";
    private static final String ADD = "stock-add";

    private final Frame frame;
    private final StockDesk desk;
    private final StockAddInteractor interactor;
    private final StockAddView view;
    private StaffAdd place;

    /** At a step. */
    public StockAddController(Frame frame, StockDesk desk, StaffAdd place) {
        this.frame = frame;
        this.desk = desk;
        this.place = place;
        this.interactor = new StockAddInteractor(desk,
                new CellWords(desk, frame.premises().showroom().catalogue(), frame.phrases()));
        this.view = new StockAddView(frame, place.step(), this);
        show(false);
    }

    private void show(boolean taken) {
        view.show(interactor.model(place, taken));
    }

    private void at(StaffAdd next) {
        place = next;
        show(false);
    }

    private StaffAdd with(StaffAdd.Step step) {
        return new StaffAdd(step, place.id(), place.model(), place.condition(), place.dollars());
    }

    @Override
    public String id() {
        return place.id();
    }

    @Override
    public void id(String typed) {
        at(new StaffAdd(place.step(), StockAddInteractor.bounded(typed), place.model(), place.condition(),
                place.dollars()));
    }

    @Override
    public void model(String model) {
        at(new StaffAdd(place.step(), place.id(), model, place.condition(), place.dollars()));
    }

    @Override
    public void condition(String condition) {
        at(new StaffAdd(place.step(), place.id(), place.model(), condition, place.dollars()));
    }

    @Override
    public void digits(String digits) {
        dollars(StockAddInteractor.digits(place.dollars(), digits));
    }

    @Override
    public void takeAway() {
        dollars(Typed.shorter(place.dollars()));
    }

    private void dollars(String dollars) {
        at(new StaffAdd(place.step(), place.id(), place.model(), place.condition(), dollars));
    }

    @Override
    public void next() {
        Optional<UnitId> id = StockAddInteractor.findId(place.id());
        if (id.isEmpty()) {
            show(false);
            return;
        }
        switch (place.step()) {
            case ID -> frame.backRoom().work(LOOK, () -> interactor.isTaken(id.get()), taken -> {
                if (taken) {
                    show(true);
                } else {
                    frame.go(with(StaffAdd.Step.MODEL));
                }
            }, frame::failed);
            case MODEL -> frame.go(with(StaffAdd.Step.PRICE));
            case PRICE -> add(id.get());
        }
    }

    private void add(UnitId id) {
        StaffAdd told = place;
        frame.backRoom().work(ADD, () -> StockChange.add(desk, StockAddInteractor.row(id, told)), answer -> {
            if (answer instanceof StockChange.Answer.Done done && done.outcome() instanceof Edit.Outcome.Kept) {
                frame.goInstead(Place.StaffUnit.of(id));
            } else if (answer instanceof StockChange.Answer.Done done) {
                Clerk.layNotKept(frame, done.outcome());
            } else {
                show(false);
            }
        }, frame::failed);
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("stockadd.title");
    }

    @Override
    public Place place() {
        return place;
    }
}
