package fencerow.kiosk.explainer;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import javafx.scene.Node;

/** One explainer. */
public final class ExplainerController implements Screen {
    private final Frame frame;
    private final Place.Topic place;
    private final ExplainerModel model;
    private final ExplainerView view;

    /** At the place. */
    public ExplainerController(Frame frame, Place.Topic place) {
        this.frame = frame;
        this.place = place;
        this.model = new ExplainerInteractor(frame.premises().showroom(), frame.library(), frame.phrases())
                .model(place.topic());
        this.view = new ExplainerView(model, frame, place.scroll(), new Touches());
    }

    private final class Touches implements ExplainerView.Touches {
        @Override
        public void topic(TopicId topic) {
            frame.go(Place.Topic.of(topic));
        }

        @Override
        public void word(String id) {
            WordSheet.lay(frame, id);
        }

        @Override
        public void quiz(QuestionId question) {
            frame.go(Place.Quiz.of(question));
        }

        @Override
        public void sum(String calculation) {
            frame.lift();
            frame.go(Place.Worksheet.of(calculation));
        }
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return model.title();
    }

    @Override
    public Place place() {
        return new Place.Topic(place.topic(), view.position());
    }

    @Override
    public int words() {
        return ExplainerInteractor.words(model);
    }
}
