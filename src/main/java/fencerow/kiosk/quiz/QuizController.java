package fencerow.kiosk.quiz;

import fencerow.checklist.Stakes;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.kit.Words;
import fencerow.quiz.Belief;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import fencerow.visit.Showroom;
import java.util.Optional;
import java.util.Random;
import javafx.scene.Node;

/** Asks one quiz question, says at once what there is to say to the answer, and leads on. */
public final class QuizController implements Screen, QuizTouches {
    private final Frame frame;
    private final Place.Quiz place;
    private final QuizInteractor interactor;
    private final QuizView view;
    private final long seed;
    private Optional<QuizQuestion> question;
    private Optional<Stakes> stakes = Optional.empty();
    private boolean sure;

    /** Asks the place's question, or the one with the most at stake. */
    public QuizController(Frame frame, Place.Quiz place) {
        this.frame = frame;
        this.place = place;
        this.interactor = new QuizInteractor(frame.phrases(), frame.library().pictures());
        this.view = new QuizView(frame, place.scroll(), this);
        this.question = place.question().flatMap(showroom().quiz()::find);
        // The same visit sees the same order again, another one another.
        this.seed = frame.seed();
        view.showWorking();
        frame.follow(frame.outlook(), this::tell);
    }

    private Showroom showroom() {
        return frame.premises().showroom();
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> {
            stakes = Optional.of(known.stakes());
            if (question.isEmpty()) {
                question = showroom().nextQuizQuestion(known.visit(), known.stakes(), seed);
            }
            if (question.isEmpty()) {
                view.showNoMore();
            }
        });
        show();
    }

    private void show() {
        question.ifPresent(asked -> view.show(interactor.model(asked, frame.visit().get(), stakes,
                new Random(seed + asked.id().hashCode())), sure));
    }

    private void answer(Belief belief) {
        question.ifPresent(asked -> frame.change(visit -> visit.believed(asked.id(), belief)));
        show();
    }

    @Override
    public void pick(OptionId option) {
        answer(new Belief(Optional.of(option), sure));
    }

    @Override
    public void notSure() {
        answer(Belief.NOT_SURE);
    }

    @Override
    public void sure() {
        sure = !sure;
        show();
    }

    @Override
    public void next() {
        frame.go(Place.Quiz.NEXT);
    }

    @Override
    public void stop() {
        frame.go(Place.QuizSummary.TOP);
    }

    @Override
    public void read(TopicId topic) {
        frame.go(Place.Topic.of(topic));
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("quiz.title");
    }

    @Override
    public Place place() {
        Optional<QuestionId> shown = question.map(QuizQuestion::id).or(place::question);
        return new Place.Quiz(shown, view.page().position());
    }

    @Override
    public int words() {
        return question.map(asked -> Words.count(frame.texts().get("quiz." + asked.id() + ".ask"))
                        + Words.count(frame.texts().get("quiz." + asked.id() + ".right")))
                .orElse(0);
    }
}
