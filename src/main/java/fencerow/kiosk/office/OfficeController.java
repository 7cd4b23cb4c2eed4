package fencerow.kiosk.office;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.ListPrinter.Printed;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.office.OfficeModel.Tile;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.scene.Node;

/** Leads staff to what they can do. */
public final class OfficeController implements Screen {
    private static final System.Logger LOG = System.getLogger(OfficeController.class.getName());
    private static final String PRINT = "staff-print";

    private final Frame frame;
    private final OfficeInteractor interactor;
    private final OfficeView view;

    /** Behind the door. */
    public OfficeController(Frame frame) {
        this.frame = frame;
        this.interactor = new OfficeInteractor(frame.premises(), frame.texts());
        this.view = new OfficeView(frame, this::touched);
        tell(Optional.empty());
    }

    private void tell(Optional<String> notice) {
        view.show(interactor.model(notice));
    }

    private void touched(Tile tile) {
        switch (tile) {
            case UNITS -> atTheDesk(Place.StaffUnits.ALL);
            case CHANGES -> atTheDesk(new Place.StaffChanges(0));
            case REPORT -> frame.go(Place.StaffReport.FIRST);
            case PROBLEMS -> view.lay(interactor.problems());
            case PRINTER -> {
                Comfort comfort = frame.comfort();
                print(() -> frame.premises().printer().testPage(comfort));
            }
            case VOLUME -> frame.layAloud();
            case RESTART -> frame.doors().restart().run();
            case CLOSE -> frame.doors().close().run();
            case SIGN_OUT -> frame.startOver(new Place.Attract());
        }
    }

    private void atTheDesk(Place place) {
        if (frame.premises().desk().isPresent()) {
            frame.go(place);
        } else {
            tell(Optional.of(interactor.noDesk()));
        }
    }

    private void print(Callable<Printed> work) {
        tell(Optional.of(interactor.printing()));
        frame.backRoom().work(PRINT, work, printed -> tell(Optional.of(interactor.printed(printed))), failure -> {
            LOG.log(System.Logger.Level.ERROR, "a page for staff could not be printed: " + failure.getClass());
            tell(Optional.of(interactor.broken()));
        });
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("staff.title");
    }

    @Override
    public Place place() {
        return new Place.Staff();
    }
}
