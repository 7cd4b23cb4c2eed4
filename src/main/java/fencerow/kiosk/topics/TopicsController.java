package fencerow.kiosk.topics;

import fencerow.kiosk.explainer.WordSheet;
import fencerow.desk.Counter;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.topics.TopicsModel.Card;
import fencerow.kiosk.topics.TopicsModel.Target;
import fencerow.search.LostWords;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;

/** All explainers, and the search. */
public final class TopicsController implements Screen {
    private static final String DESK = "search";

    private final Frame frame;
    private final Place.Topics place;
    private final TopicsModel model;
    private final TopicsInteractor interactor;
    private final TopicsView view;
    private String lost = "";

    /** At the place. */
    public TopicsController(Frame frame, Place.Topics place) {
        this.frame = frame;
        this.place = place;
        this.interactor = new TopicsInteractor(frame.premises().showroom().catalogue(), frame.library(),
                frame.texts(), frame.premises().search());
        List<Card> cards = place.query().isPresent() ? List.of() : interactor.cards(place.stop());
        this.model = new TopicsModel(
                interactor.shelves(place.stop(), place.query().isPresent()), place.query(), cards);
        this.view = new TopicsView(model, frame, place.scroll(), new Touches());
        frame.follow(model.query(), this::look);
    }

    private final class Touches implements TopicsView.Touches {
        @Override
        public void shelf(Place shelf) {
            frame.goInstead(shelf);
        }

        @Override
        public void card(Target target) {
            if (target instanceof Target.Topic topic) {
                frame.go(Place.Topic.of(topic.topic()));
            } else if (target instanceof Target.Word word) {
                WordSheet.lay(frame, word.id());
            }
        }

        @Override
        public void search() {
            frame.goInstead(Place.Topics.SEARCH);
        }

        @Override
        public void typed(String letter) {
            model.query().set(model.query().get() + letter);
        }

        @Override
        public void backspace() {
            String typed = model.query().get();
            if (!typed.isEmpty()) {
                model.query().set(typed.substring(0, typed.offsetByCodePoints(typed.length(), -1)));
            }
        }

        @Override
        public void closeSearch() {
            frame.goInstead(new Place.Topics(place.stop(), Optional.empty(), 0));
        }
    }

    private void look(String query) {
        if (!model.searching()) {
            return;
        }
        String language = frame.comfort().language();
        frame.backRoom().work(DESK, () -> interactor.found(language, query), this::show, frame::failed);
    }

    private void show(List<Card> found) {
        String query = model.query().get().strip();
        lost = "";
        if (query.isEmpty()) {
            model.note().set(frame.say("topics.type"));
            model.cards().set(List.of());
        } else if (found.isEmpty()) {
            lost = query;
            model.note().set(frame.say("topics.nothing", Map.of("words", query)));
            model.cards().set(interactor.cards(Optional.empty()));
        } else {
            model.note().set("");
            model.cards().set(found);
        }
    }

    /** What was searched for last and not found is counted, as far as it is ordinary words. */
    @Override
    public void left() {
        List<String> words = lost.isEmpty() ? List.of() : LostWords.load().of(lost);
        if (!words.isEmpty()) {
            frame.counts().count(Counter.of(Counter.Kind.NOT_FOUND, String.join(" ", words)));
        }
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("topics.title");
    }

    @Override
    public Place place() {
        Optional<String> query = place.query().map(typed -> model.query().get());
        return new Place.Topics(place.stop(), query, view.position());
    }
}
