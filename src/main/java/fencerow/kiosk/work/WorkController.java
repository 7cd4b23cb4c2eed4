package fencerow.kiosk.work;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.wording.SizingWords;
import javafx.scene.Node;

/** All calculations, by area. */
public final class WorkController implements Screen {
    private final Frame frame;
    private final Place.Work place;
    private final WorkView view;

    /** At the place. */
    public WorkController(Frame frame, Place.Work place) {
        this.frame = frame;
        this.place = place;
        WorkModel model = new WorkInteractor(frame.premises().showroom().workbook(),
                SizingWords.of(frame.texts(), frame.comfort().metric())).model(place.area());
        this.view = new WorkView(model, frame, place.scroll(), frame::goInstead, frame::go);
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("work.title");
    }

    @Override
    public Place place() {
        return new Place.Work(place.area(), view.position());
    }
}
