package fencerow.kiosk.home;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import java.util.Optional;
import javafx.scene.Node;

/** The start page. */
public final class HomeController implements Screen {
    private final Frame frame;
    private final Node view;

    /** For the frame's visit. */
    public HomeController(Frame frame) {
        this.frame = frame;
        var interactor = new HomeInteractor(frame.texts(), frame.library());
        Optional<String> code = frame.premises().comeBack().map(offered -> frame.say("home.have-code"));
        var model = new HomeModel(interactor.doors(), frame.say("home.search"), frame.say("home.work-it-out"), code,
                interactor.tractor());
        this.view = HomeView.of(model, frame, frame::go);
    }

    @Override
    public Node view() {
        return view;
    }

    @Override
    public String title() {
        return frame.say("home.title");
    }

    @Override
    public Place place() {
        return new Place.Home();
    }
}
