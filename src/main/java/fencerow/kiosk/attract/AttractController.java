package fencerow.kiosk.attract;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import javafx.scene.Node;

/** Shows passers-by what there is to learn; any touch leads to the start page and does nothing else. */
public final class AttractController implements Screen {
    private final AttractView view;

    /** For the frame's content. */
    public AttractController(Frame frame) {
        AttractModel model = AttractModel.of(frame.premises(), frame);
        this.view = new AttractView(model, () -> frame.go(new Place.Home()));
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return "";
    }

    @Override
    public Place place() {
        return new Place.Attract();
    }

    @Override
    public boolean bare() {
        return true;
    }

    @Override
    public void left() {
        view.stop();
    }
}
