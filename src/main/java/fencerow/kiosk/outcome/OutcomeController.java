package fencerow.kiosk.outcome;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.kit.Page;
import fencerow.wording.Labels;
import javafx.scene.Node;

/** Shows what the quiz has shown so far. */
public final class OutcomeController implements Screen {
    private final Frame frame;
    private final Page view;

    /** For the frame's visit. */
    public OutcomeController(Frame frame, Place.QuizSummary place) {
        this.frame = frame;
        OutcomeInteractor interactor = new OutcomeInteractor(
                frame.premises().showroom().quiz(), new Labels(frame.texts()), frame.library());
        this.view = new OutcomeView(frame, frame::go)
                .of(interactor.model(frame.visit().get().beliefs()), place.scroll());
    }

    @Override
    public Node view() {
        return view;
    }

    @Override
    public String title() {
        return frame.say("outcome.title");
    }

    @Override
    public Place place() {
        return new Place.QuizSummary(view.position());
    }
}
