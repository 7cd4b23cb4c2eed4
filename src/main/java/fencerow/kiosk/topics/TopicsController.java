package fencerow.kiosk.topics;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import javafx.scene.Node;

/** All explainers. */
public final class TopicsController implements Screen {
    private final Frame frame;
    private final Place.Topics place;
    private final TopicsView view;

    /** At the place. */
    public TopicsController(Frame frame, Place.Topics place) {
        this.frame = frame;
        this.place = place;
        TopicsInteractor interactor =
                new TopicsInteractor(frame.premises().showroom().catalogue(), frame.library(), frame.texts());
        this.view = new TopicsView(
                new TopicsModel(interactor.shelves(place.stop()), interactor.cards(place.stop())),
                frame, place.scroll());
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("topics.title");
    }

    @Override
    public Place place() {
        return new Place.Topics(place.stop(), view.position());
    }
}
