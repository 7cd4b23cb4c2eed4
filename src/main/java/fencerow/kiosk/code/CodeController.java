package fencerow.kiosk.code;

import fencerow.desk.ComeBackCode;
import fencerow.kiosk.frame.ComeBack;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.visit.Showroom;
import java.util.Optional;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;

/** Takes the code of an earlier visit and goes on with that. */
public final class CodeController implements Screen, CodeView.Touches {
    private static final System.Logger LOG = System.getLogger(CodeController.class.getName());
    private static final String LOOK = "code";

    private final Frame frame;
    private final ComeBack comeBack;
    private final CodeModel model;
    private final CodeInteractor interactor;
    private final CodeView view;
    private boolean looking;

    /** At the place. */
    public CodeController(Frame frame, Place.EnterCode place, ComeBack comeBack) {
        this.frame = frame;
        this.comeBack = comeBack;
        this.model = new CodeModel(place.typed());
        this.interactor = new CodeInteractor(frame.texts(), comeBack.days());
        this.view = new CodeView(model, frame, this);
        view.node().addEventHandler(KeyEvent.KEY_TYPED, this::typed);
    }

    private void typed(KeyEvent event) {
        if (event.getCharacter().equals("\b")) {
            backspace();
        } else {
            typed(event.getCharacter());
        }
    }

    @Override
    public void typed(String letter) {
        if (!looking) {
            model.note().set("");
            model.typed().set(interactor.typed(model.typed().get(), letter));
        }
    }

    @Override
    public void backspace() {
        if (!looking) {
            model.note().set("");
            model.typed().set(interactor.backspace(model.typed().get()));
        }
    }

    @Override
    public void look() {
        Optional<ComeBackCode> code = ComeBackCode.findTyped(model.typed().get());
        if (code.isEmpty()) {
            model.note().set(interactor.mistyped(model.typed().get()));
        } else if (!looking) {
            looking = true;
            model.note().set(interactor.looking());
            Showroom showroom = frame.premises().showroom();
            frame.backRoom().work(LOOK, () -> comeBack.find(code.get(), showroom), this::found, this::failed);
        }
    }

    private void found(ComeBack.Found found) {
        looking = false;
        if (found instanceof ComeBack.Found.Back back) {
            frame.change(now -> back.remembered().visit());
            model.typed().set("");
            model.note().set("");
            model.back().set(interactor.back(back.remembered()));
        } else if (found instanceof ComeBack.Found.Wait wait) {
            model.note().set(interactor.wait(wait.left()));
        } else {
            model.note().set(interactor.nothing());
        }
    }

    /** Writes down what kind of failure it was, without the code. */
    private void failed(Throwable failure) {
        LOG.log(System.Logger.Level.ERROR, "a code could not be looked up: " + failure.getClass().getName());
        looking = false;
        model.note().set(interactor.broken());
    }

    @Override
    public void go(Place place) {
        frame.go(place);
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("code.title");
    }

    @Override
    public Place place() {
        return new Place.EnterCode(model.typed().get());
    }

    @Override
    public void left() {
        frame.backRoom().cancel(LOOK);
    }
}
