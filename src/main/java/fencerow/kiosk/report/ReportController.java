package fencerow.kiosk.report;

import fencerow.desk.NotKeptException;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import javafx.scene.Node;

/** Shows the report of a period. */
public final class ReportController implements Screen {
    private static final String DESK = "report";

    private final Frame frame;
    private final Place.StaffReport place;
    private final ReportView view;

    /** Of the place's period. */
    public ReportController(Frame frame, Place.StaffReport place) {
        this.frame = frame;
        this.place = place;
        this.view = new ReportView(frame, place,
                period -> frame.goInstead(new Place.StaffReport(period, 0)));
        var interactor = new ReportInteractor(frame.premises().counts(), frame.premises().showroom(),
                frame.phrases(), frame.library());
        frame.backRoom().work(DESK, () -> interactor.sheet(place.period()), view::show, this::failed);
    }

    private void failed(Throwable failure) {
        if (failure instanceof NotKeptException) {
            view.showUnreadable();
        } else {
            frame.failed(failure);
        }
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("report.title");
    }

    @Override
    public Place place() {
        return new Place.StaffReport(place.period(), view.page().position());
    }
}
