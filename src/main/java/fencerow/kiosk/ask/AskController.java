package fencerow.kiosk.ask;

import fencerow.desk.Counter;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.kiosk.kit.Words;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.terms.QuestionId;
import fencerow.wording.AnswerWords;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.animation.PauseTransition;
import javafx.scene.Node;
import javafx.util.Duration;

/** Asks one question about the work and leads on to the next. */
public final class AskController implements Screen, AskModel.Touches {
    private static final String SUGGEST = "next-question";
    /** Somebody who flicks through questions is not to make the machine think about each. */
    private static final Duration BEFORE_THINKING = Duration.millis(600);

    private final Frame frame;
    private final Place.Questions place;
    private final AskInteractor interactor;
    private final Question question;
    private final AskModel model;
    private final AskView view;
    private final PauseTransition pause = new PauseTransition(BEFORE_THINKING);
    private Optional<QuestionId> suggested = Optional.empty();

    /** For the question, which applies to the present answers. */
    private AskController(Frame frame, Place.Questions place, AskInteractor interactor, Question question) {
        this.frame = frame;
        this.place = place;
        this.interactor = interactor;
        this.question = question;
        this.model = new AskModel(interactor.card(question, answers(), place.alone()));
        this.view = new AskView(frame, place.scroll(), model, this);
        model.given().set(interactor.given(question, answers()));
        frame.counts().countOnce(Counter.of(Counter.Kind.ASKED, question.id().value()));
        frame.follow(frame.outlook(), this::tell);
        pause.setOnFinished(done -> think());
        pause.play();
    }

    /** For the place's question; empty where no question is open. */
    public static Optional<Screen> of(Frame frame, Place.Questions place) {
        AskInteractor interactor = new AskInteractor(frame.premises().showroom(),
                new AnswerWords(frame.phrases(), frame.comfort().metric()), frame.library().pictures());
        return interactor
                .find(place.question(), frame.visit().get().answers(), passedOver(frame, place.skipped()))
                .map(question -> new AskController(frame, place, interactor, question));
    }

    /** Those skipped, and those that came up for a job that is set aside. */
    private static Set<QuestionId> passedOver(Frame frame, Set<QuestionId> skipped) {
        Set<QuestionId> passed = new LinkedHashSet<>(skipped);
        passed.addAll(frame.premises().showroom().idleQuestions(frame.visit().get()));
        return passed;
    }

    private Answers answers() {
        return frame.visit().get().answers();
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> model.fits().set(Optional.of(interactor.fits(known.ranking()))));
    }

    private void think() {
        if (view.page().getScene() == null || view.page().getScene().getWindow() == null) {
            return; // drawn without a window: nobody will answer
        }
        Answers now = answers();
        Set<QuestionId> passed = passedOver(frame, place.skipped());
        frame.backRoom().work(SUGGEST, () -> interactor.suggest(question.id(), now, passed), found -> {
            suggested = found;
            model.settled().set(found.isEmpty());
        }, failure -> suggested = Optional.empty());
    }

    private void answer(Optional<Answer> answer) {
        frame.change(visit -> answer
                .map(given -> visit.answered(question.id(), given))
                .orElseGet(() -> visit.unanswered(question.id())));
        model.given().set(interactor.given(question, answers()));
    }

    private void goOn(Set<QuestionId> skipped) {
        if (place.alone()) {
            frame.back();
            return;
        }
        Optional<QuestionId> next = interactor.after(question.id(), answers(), passedOver(frame, skipped), suggested);
        frame.go(next.isPresent() ? new Place.Questions(next, skipped, false, 0) : Place.Results.TOP);
    }

    @Override
    public void pick(String key) {
        answer(interactor.picked(question, answers(), key));
        if (question.choose() == Question.Choose.ONE) {
            goOn(place.skipped());
        }
    }

    @Override
    public void change(int steps) {
        answer(interactor.changed(question, answers(), steps));
    }

    @Override
    public void next() {
        if (answers().find(question.id()).isEmpty()) {
            answer(Optional.of(new Answer.Chosen(List.of())));
        }
        goOn(place.skipped());
    }

    @Override
    public void notSure() {
        answer(Optional.of(new Answer.NotSure()));
        goOn(place.skipped());
    }

    @Override
    public void skip() {
        Set<QuestionId> skipped = new HashSet<>(place.skipped());
        skipped.add(question.id());
        goOn(skipped);
    }

    @Override
    public void takeBack() {
        answer(Optional.empty());
    }

    @Override
    public void results() {
        frame.go(Place.Results.TOP);
    }

    @Override
    public void overview() {
        frame.go(Place.AllAnswers.TOP);
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("ask.title");
    }

    @Override
    public Place place() {
        return new Place.Questions(
                Optional.of(question.id()), place.skipped(), place.alone(), view.page().position());
    }

    @Override
    public int words() {
        return Words.count(model.card().ask()) + Words.count(model.card().why());
    }

    @Override
    public void left() {
        pause.stop();
        frame.backRoom().cancel(SUGGEST);
    }
}
