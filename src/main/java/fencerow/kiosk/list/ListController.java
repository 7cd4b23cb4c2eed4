package fencerow.kiosk.list;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import java.util.Optional;
import javafx.scene.Node;

/** Shows the shopper's list and lets them strike out lines. */
public final class ListController implements Screen {
    private static final String COMPOSE = "list";
    private static final int WORDS = 400;

    private final Frame frame;
    private final ListInteractor interactor;
    private final ListView view;

    /** For the frame's visit. */
    public ListController(Frame frame, Place.ListPreview place) {
        this.frame = frame;
        this.interactor = new ListInteractor(frame.premises().showroom(), frame.phrases());
        this.view = new ListView(frame, place.scroll(), line -> frame.change(visit -> visit.toggleLine(line)),
                frame::go);
        frame.follow(frame.outlook(), this::tell);
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known ->
                frame.backRoom().work(COMPOSE, () -> interactor.model(known), view::show, frame::failed));
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("list.title");
    }

    @Override
    public Place place() {
        return new Place.ListPreview(view.page().position());
    }

    @Override
    public int words() {
        return WORDS;
    }

    @Override
    public void left() {
        frame.backRoom().cancel(COMPOSE);
    }
}
