package fencerow.kiosk.compare;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.kit.Buttons;
import fencerow.kiosk.kit.Icon;
import fencerow.kiosk.kit.Page;
import fencerow.kiosk.kit.Words;
import fencerow.terms.UnitId;
import java.util.List;
import java.util.Optional;
import javafx.scene.Node;

/** Shows the pinned units beside each other. */
public final class CompareController implements Screen {
    private static final int WORDS = 250;

    private final Frame frame;
    private final CompareInteractor interactor;
    private final CompareView view;
    private final Page page;

    /** For the units that the visit has pinned. */
    public CompareController(Frame frame, Place.SideBySide place) {
        this.frame = frame;
        this.interactor = new CompareInteractor(frame.premises().showroom(), frame.phrases());
        this.view = new CompareView(frame);
        this.page = new Page(frame.scale(), place.scroll(), frame.say("column.up"), frame.say("column.down"));
        page.show(Words.lead(frame.say("results.working")));
        page.showFoot(frame.scale(),
                List.of(Buttons.secondary(Icon.FIT, frame.say("ask.results"), () -> frame.go(Place.Results.TOP))),
                List.of(Buttons.primary(Icon.LIST, frame.say("results.list"),
                        () -> frame.go(Place.ListPreview.TOP))));
        frame.follow(frame.outlook(), this::tell);
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> {
            List<UnitId> pinned = known.visit().pinned();
            page.show(pinned.size() < 2
                    ? Words.lead(frame.say("compare.too-few"))
                    : view.of(interactor.model(pinned, known), unit -> frame.go(Place.UnitSheet.of(unit))));
        });
    }

    @Override
    public Node view() {
        return page;
    }

    @Override
    public String title() {
        return frame.say("compare.title");
    }

    @Override
    public Place place() {
        return new Place.SideBySide(page.position());
    }

    @Override
    public int words() {
        return WORDS;
    }
}
