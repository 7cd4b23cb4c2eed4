package fencerow.kiosk.answers;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.kit.Page;
import fencerow.wording.AnswerWords;
import javafx.scene.Node;

/** Shows all answers, each to be changed. */
public final class AnswersController implements Screen {
    private final Frame frame;
    private final Page view;

    /** For the frame's visit. */
    public AnswersController(Frame frame, Place.AllAnswers place) {
        this.frame = frame;
        AnswersModel model = new AnswersInteractor(
                        frame.premises().showroom().questionnaire(),
                        new AnswerWords(frame.phrases(), frame.comfort().metric()))
                .model(frame.visit().get().answers());
        this.view = AnswersView.of(model, frame, place.scroll(), frame::go);
    }

    @Override
    public Node view() {
        return view;
    }

    @Override
    public String title() {
        return frame.say("answers.title");
    }

    @Override
    public Place place() {
        return new Place.AllAnswers(view.position());
    }
}
