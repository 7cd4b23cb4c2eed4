package fencerow.kiosk.staff;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import javafx.scene.Node;

/** The staff door and what is behind it. It closes again when the screen is left. */
public final class StaffController implements Screen {
    private final Frame frame;
    private final StaffModel model;
    private final StaffView view;

    /** With the door closed. */
    public StaffController(Frame frame) {
        this.frame = frame;
        this.model = new StaffModel(frame.premises().contentVersion(), frame.premises().problems());
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
                frame.backRoom().work("pin", () -> interactor.tryOpen(digits),
                        tried -> interactor.tried(model, tried), frame::failed);
            }

            @Override
            public void restart() {
                frame.doors().restart().run();
            }

            @Override
            public void close() {
                frame.doors().close().run();
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
        return new Place.Staff();
    }
}
