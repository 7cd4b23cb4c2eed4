package fencerow.kiosk.guide;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.kit.Words;
import fencerow.match.Ranking;
import fencerow.terms.UnitId;
import fencerow.visit.Visit;
import java.util.Optional;
import javafx.scene.Node;

/** Lets a salesperson and a shopper try what changes the answer, and go back to where the shopper was. */
public final class GuideController implements Screen, GuideTouches {
    private static final String BEFORE = "before";
    private static final String SHEET = "units-sheet";

    private final Frame frame;
    private final Place.Guide place;
    private final GuideInteractor interactor;
    private final GuideView view;
    private Optional<Ranking> before = Optional.empty();

    /** From how the visit stood when they began. */
    public GuideController(Frame frame, Place.Guide place) {
        this.frame = frame;
        this.place = place;
        this.interactor = new GuideInteractor(frame.premises().showroom(), frame.phrases());
        this.view = new GuideView(frame, place.scroll(), this);
        frame.follow(frame.outlook(), this::tell);
        frame.backRoom().work(BEFORE, () -> interactor.ranking(place.before()), known -> {
            before = Optional.of(known);
            tell(frame.outlook().get());
        }, frame::failed);
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> view.show(interactor.model(known, before)));
    }

    @Override
    public void toggle(String must) {
        frame.change(visit -> visit.toggleAside(must));
    }

    @Override
    public void budget(Optional<Long> by) {
        frame.change(visit -> interactor.budget(visit, by));
    }

    @Override
    public void open(UnitId unit) {
        frame.go(Place.UnitSheet.of(unit));
    }

    @Override
    public void pin(UnitId unit) {
        frame.change(visit -> visit.togglePin(unit));
    }

    @Override
    public void go(Place there) {
        frame.go(there);
    }

    @Override
    public void unitsSheet() {
        Visit visit = frame.visit().get();
        Comfort comfort = frame.comfort();
        frame.lay(frame.say("guide.units-sheet"), Words.body(frame.say("office.printing")));
        frame.backRoom().work(SHEET, () -> frame.premises().printer().unitsSheet(visit, comfort),
                printed -> tell(printed.outcome().says(frame.texts()) + " " + printed.outcome().todo(frame.texts())),
                failure -> tell(frame.say("office.broken")));
    }

    private void tell(String outcome) {
        frame.lay(frame.say("guide.units-sheet"), Words.body(outcome));
    }

    @Override
    public void handBack(boolean asItWas) {
        if (asItWas) {
            frame.change(visit -> GuideInteractor.asItWas(visit, place.before()));
        }
        frame.back();
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("guide.title");
    }

    @Override
    public Place place() {
        return new Place.Guide(place.before(), view.page().position());
    }

    @Override
    public void left() {
        frame.backRoom().cancel(BEFORE);
    }
}
