package fencerow.kiosk.staff;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import javafx.scene.Node;

/** The staff door; it leads on to where staff were going. */
public final class StaffController implements Screen {
    private final Frame frame;
    private final StaffModel model;
    private final StaffView view;
    private final Place.ForStaff place;

    /** Locked, before a place. */
    public StaffController(Frame frame, Place.ForStaff place) {
        this.frame = frame;
        this.place = place;
        this.model = new StaffModel();
        StaffInteractor interactor = new StaffInteractor(frame.premises().settings().pin(), frame.doors().lock());
        this.view = new StaffView(model, frame, new StaffView.Touches() {
            @Override
            public void typed(String digit) {
                interactor.typed(model, digit);
            }

            @Override
            public void backspace() {
                interactor.backspace(model);
            }

            @Override
            public void enter() {
                String digits = model.typed().get();
                frame.backRoom().work("pin", () -> interactor.tryOpen(digits), this::tried, frame::failed);
            }

            private void tried(StaffInteractor.Tried tried) {
                interactor.tried(model, tried);
                if (tried instanceof StaffInteractor.Tried.Open) {
                    frame.goInstead(place);
                }
            }
        });
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("staff.title");
    }

    @Override
    public Place place() {
        return place;
    }
}
