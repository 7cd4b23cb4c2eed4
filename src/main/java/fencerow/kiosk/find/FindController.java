package fencerow.kiosk.find;

import fencerow.desk.Counter;
import fencerow.kiosk.explainer.WordSheet;
import fencerow.kiosk.find.FindModel.Found;
import fencerow.kiosk.find.FindModel.Narrowed;
import fencerow.kiosk.find.FindModel.Target;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.search.Kind;
import fencerow.search.Tag;
import fencerow.terms.ItemId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import fencerow.terms.UnitId;
import fencerow.visit.Visit;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.scene.Node;
import javafx.scene.input.KeyEvent;

/** Finds while one types, on the touch keyboard or on one that is plugged in. */
public final class FindController implements Screen {
    private static final String DESK = "search";
    private static final QuestionId JOBS = new QuestionId("jobs");

    private final Frame frame;
    private final FindModel model;
    private final FindInteractor interactor;
    private final FindView view;
    private List<String> lost = List.of();
    private Narrowed narrowed;

    /** At the place. */
    public FindController(Frame frame, Place.Find place) {
        this.frame = frame;
        this.model = new FindModel(place.query());
        this.interactor =
                new FindInteractor(frame.library(), frame.premises().showroom(), frame.phrases(),
                        frame.premises().search());
        this.narrowed = new Narrowed(place.kind(), place.only());
        this.view = new FindView(model, frame, place.scroll(), new Touches());
        view.node().addEventHandler(KeyEvent.KEY_TYPED, this::typed);
        frame.follow(model.query(), query -> look());
    }

    private final class Touches implements FindView.Touches {
        @Override
        public void card(Target target) {
            lost = model.found().get().deadEnd() ? lost : List.of();
            open(target);
        }

        @Override
        public void kind(Optional<Kind> wanted) {
            narrowed = narrowed.to(wanted);
            look();
        }

        @Override
        public void tag(Tag.Of of, Optional<Tag> wanted) {
            narrowed = narrowed.to(of, wanted);
            look();
        }

        @Override
        public void words(String words) {
            model.query().set(words);
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
        public void close() {
            frame.back();
        }

        @Override
        public void tractor() {
            frame.go(new Place.Home());
        }
    }

    private void typed(KeyEvent event) {
        String letter = event.getCharacter();
        if (letter.equals("\b")) {
            view.touches().backspace();
        } else if (!letter.isEmpty() && !Character.isISOControl(letter.codePointAt(0))) {
            view.touches().typed(letter);
        }
        event.consume();
    }

    private void open(Target target) {
        switch (target.kind()) {
            case EXPLAINER -> frame.go(Place.Topic.of(new TopicId(target.id())));
            case WORD -> WordSheet.lay(frame, target.id());
            case UNIT -> frame.go(new Place.UnitSheet(new UnitId(target.id()), 0));
            case QUIZ -> frame.go(Place.Quiz.of(new QuestionId(target.id())));
            case JOB -> frame.go(new Place.Questions(Optional.of(JOBS), Set.of(), false, 0));
            case ATTACHMENT -> AttachmentSheet.lay(frame, new ItemId(target.id()));
            case CALCULATION -> frame.go(Place.Worksheet.of(target.id()));
        }
    }

    private void look() {
        String typed = model.query().get();
        Narrowed wanted = narrowed;
        Visit visit = frame.visit().get();
        frame.backRoom().work(DESK, () -> {
            Found found = interactor.found(typed, wanted, visit);
            return new Looked(found, interactor.lost(typed, found));
        }, this::show, frame::failed);
    }

    private record Looked(Found found, List<String> lost) {}

    private void show(Looked looked) {
        lost = looked.lost();
        model.found().set(looked.found());
    }

    /** What was looked for last and not found is counted, as far as it is ordinary words. */
    @Override
    public void left() {
        if (!lost.isEmpty()) {
            frame.counts().count(Counter.of(Counter.Kind.NOT_FOUND, String.join(" ", lost)));
        }
    }

    @Override
    public Node view() {
        return view.node();
    }

    @Override
    public String title() {
        return frame.say("find.title");
    }

    @Override
    public Place place() {
        return new Place.Find(model.query().get(), narrowed.kind(), narrowed.only(), view.position());
    }
}
