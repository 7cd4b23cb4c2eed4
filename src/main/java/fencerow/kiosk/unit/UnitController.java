package fencerow.kiosk.unit;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.frame.UnitPictures;
import fencerow.kiosk.matching.Photograph;
import fencerow.wording.SizingWords;
import java.util.Optional;
import javafx.scene.Node;

/** Shows everything on one unit. */
public final class UnitController implements Screen {
    private static final int WORDS = 300;

    private static final String PHOTOGRAPH = "photograph";
    private static final double PHOTOGRAPH_DOTS = 1600;

    private final Frame frame;
    private final Place.UnitSheet place;
    private final UnitInteractor interactor;
    private final UnitView view;

    /** For the place's unit. */
    public UnitController(Frame frame, Place.UnitSheet place) {
        this.frame = frame;
        this.place = place;
        this.interactor = new UnitInteractor(frame.premises().showroom(), frame.library(), frame.phrases(),
                SizingWords.of(frame.texts(), frame.comfort().metric()));
        this.view = new UnitView(frame, place.scroll(), frame::go,
                () -> frame.change(visit -> visit.togglePin(place.unit())));
        view.showWorking();
        frame.follow(frame.outlook(), this::tell);
        UnitPictures pictures = frame.premises().pictures();
        // Without its photograph, the unit's drawing is there.
        frame.backRoom().work(PHOTOGRAPH, () -> Photograph.of(pictures.find(place.unit()), PHOTOGRAPH_DOTS),
                view::show, failure -> { });
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> interactor.model(place.unit(), known).ifPresentOrElse(view::show, view::showGone));
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("unit.title");
    }

    @Override
    public Place place() {
        return new Place.UnitSheet(place.unit(), view.page().position());
    }

    @Override
    public int words() {
        return WORDS;
    }
}
