package fencerow.kiosk.results;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.terms.UnitId;
import fencerow.wording.AnswerWords;
import java.util.Optional;
import javafx.scene.Node;

/** Shows what suits, and keeps showing it as must-haves are set aside. */
public final class ResultsController implements Screen, ResultsTouches {
    private static final String IN_THE_WAY = "in-the-way";

    private final Frame frame;
    private final ResultsInteractor interactor;
    private final ResultsView view;
    private boolean all;

    /** For the frame's visit. */
    public ResultsController(Frame frame, Place.Results place) {
        this.frame = frame;
        this.all = place.all();
        this.interactor = new ResultsInteractor(frame.premises().showroom(),
                new AnswerWords(frame.phrases(), frame.comfort().metric()));
        this.view = new ResultsView(frame, place.scroll(), this);
        view.showWorking();
        frame.follow(frame.outlook(), this::tell);
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> {
            ResultsModel model = interactor.model(known, all);
            view.show(model, Optional.empty());
            if (ResultsInteractor.isStuck(model)) {
                frame.backRoom().work(IN_THE_WAY, () -> interactor.inTheWay(known),
                        found -> view.show(model, found), frame::failed);
            }
        });
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
    public void toggle(String must) {
        frame.change(visit -> visit.toggleAside(must));
    }

    @Override
    public void showAll() {
        all = true;
        tell(frame.outlook().get());
    }

    @Override
    public void guide() {
        frame.go(new Place.Guide(frame.visit().get(), 0));
    }

    @Override
    public void go(Place place) {
        frame.go(place);
    }

    @Override
    public void left() {
        frame.backRoom().cancel(IN_THE_WAY);
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("results.title");
    }

    @Override
    public Place place() {
        return new Place.Results(all, view.page().position());
    }
}
