package fencerow.kiosk.quote;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Screen;
import fencerow.stock.Condition;
import fencerow.terms.FeatureId;
import fencerow.terms.MachineClass;
import fencerow.terms.UnitId;
import fencerow.visit.SecondQuote;
import java.util.Arrays;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.UnaryOperator;
import javafx.scene.Node;

/** Lets a shopper tell of another seller's tractor, and shows it beside the best one here. */
public final class QuoteController implements Screen, QuoteTouches {
    private static final int WORDS_BESIDE = 250;

    private final Frame frame;
    private final Place.SecondQuote place;
    private final QuoteInteractor interactor;
    private final QuoteView view;
    private Optional<MachineClass> size;
    private PriceLine typing = PriceLine.ASKING;

    /** At a step of telling; at the first where nothing is told yet. */
    public QuoteController(Frame frame, Place.SecondQuote place) {
        this.frame = frame;
        this.interactor = new QuoteInteractor(frame.premises().showroom(), frame.phrases());
        this.view = new QuoteView(frame, place.scroll(), this);
        this.place = told().isPresent() ? place : Place.SecondQuote.FIRST;
        this.size = told().map(SecondQuote::machineClass).or(place::size);
        view.showWorking();
        if (step() == Place.SecondQuote.Step.BESIDE) {
            frame.follow(frame.outlook(), this::tell);
        } else {
            show();
        }
    }

    private Place.SecondQuote.Step step() {
        return place.step();
    }

    private Optional<SecondQuote> told() {
        return interactor.told(frame.visit().get());
    }

    private void tell(Optional<Outlook> outlook) {
        outlook.ifPresent(known -> view.show(interactor.beside(known)));
    }

    private void show() {
        switch (step()) {
            case MACHINE -> view.show(interactor.machine(size, told()), told().isPresent());
            case PRICE -> told().ifPresent(quote -> view.show(interactor.price(quote, typing)));
            case EQUIPMENT -> told().ifPresent(quote -> view.show(interactor.equipment(quote, this::matters)));
            case BESIDE -> {
                // shown as soon as it is worked out
            }
        }
    }

    private boolean matters(FeatureId feature) {
        return frame.outlook().get()
                .filter(known -> known.stakes().relevance().requirement(feature).isPresent())
                .isPresent();
    }

    private void change(UnaryOperator<SecondQuote> next) {
        told().ifPresent(quote -> frame.change(visit -> interactor.with(visit, next.apply(quote))));
        show();
    }

    private void tellOf(MachineClass machineClass, Condition condition) {
        SecondQuote quote = told().map(earlier -> earlier.with(machineClass, condition))
                .orElseGet(() -> SecondQuote.of(machineClass, condition));
        frame.change(visit -> interactor.with(visit, quote));
    }

    @Override
    public void size(String key) {
        size = Arrays.stream(MachineClass.values()).filter(each -> each.id().equals(key)).findFirst();
        told().ifPresent(quote -> size.ifPresent(chosen -> tellOf(chosen, quote.condition())));
        show();
    }

    @Override
    public void state(String key) {
        Arrays.stream(Condition.values())
                .filter(each -> each.id().equals(key))
                .findFirst()
                .ifPresent(state -> size.ifPresent(chosen -> tellOf(chosen, state)));
        show();
    }

    @Override
    public void hours(String key) {
        change(quote -> quote.withHours(OptionalInt.of(Integer.parseInt(key))));
    }

    @Override
    public void changeHours(int by) {
        change(quote -> interactor.changedHours(quote, by));
    }

    @Override
    public void line(PriceLine line) {
        typing = line;
        show();
    }

    @Override
    public void digits(String digits) {
        change(quote -> interactor.typed(quote, typing, digits));
    }

    @Override
    public void takeAway() {
        change(quote -> interactor.takenAway(quote, typing));
    }

    @Override
    public void seen(FeatureId feature, Optional<Boolean> there) {
        change(quote -> quote.with(feature, there));
    }

    @Override
    public void next() {
        frame.go(Place.SecondQuote.of(step().next()));
    }

    @Override
    public void again() {
        frame.go(Place.SecondQuote.FIRST);
    }

    @Override
    public void forget() {
        frame.change(visit -> visit.told(Optional.empty()));
        frame.go(Place.Results.TOP);
    }

    @Override
    public void open(UnitId unit) {
        frame.go(Place.UnitSheet.of(unit));
    }

    @Override
    public void list() {
        frame.go(Place.ListPreview.TOP);
    }

    @Override
    public Node view() {
        return view.page();
    }

    @Override
    public String title() {
        return frame.say("quote.title");
    }

    @Override
    public Place place() {
        return new Place.SecondQuote(step(), size, view.page().position());
    }

    @Override
    public int words() {
        return step() == Place.SecondQuote.Step.BESIDE ? WORDS_BESIDE : 0;
    }
}
