package fencerow.kiosk.frame;

import fencerow.explainers.Library;
import fencerow.kiosk.kit.Scale;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.TextSize;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import fencerow.wording.Texts;
import java.time.Clock;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Consumer;
import java.util.function.UnaryOperator;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.InputEvent;
import javafx.scene.layout.StackPane;
import javafx.util.Subscription;

/**
 * What every screen is shown in and asks for what it needs: visit, words, ways, work. Confined to the screen's thread.
 */
public final class Frame implements Sayings {
    private Premises premises;
    private Premises next;
    private final ScreenMaker maker;
    private final BackRoom backRoom;
    private final Doors doors;
    private final Clock clock;
    private final Register register;
    private IdleWatch idle;
    private final ObjectProperty<Visit> visit = new SimpleObjectProperty<>(Visit.NEW);
    private final ObjectProperty<Optional<Outlook>> outlook = new SimpleObjectProperty<>(Optional.empty());
    private Optional<Outlook> last = Optional.empty();
    private final StackPane root = new StackPane();
    private final Furniture furniture;
    private final Overlays overlays;
    final ReadAloud aloud;
    private Comfort comfort;
    private long seed;
    private Scale scale = new Scale(1, TextSize.NORMAL);
    private Trail trail = Trail.startingAt(new Place.Attract());
    private final OnShow onShow = new OnShow();
    private Subscription inScene = Subscription.EMPTY;

    /** Furnishes a frame; {@link #show} puts it into a scene. */
    public Frame(Premises premises, ScreenMaker maker, BackRoom backRoom, Clock clock, Doors doors, Speaker speaker) {
        this.premises = premises;
        this.next = premises;
        this.maker = maker;
        this.backRoom = backRoom;
        this.doors = doors;
        this.clock = clock;
        this.register = new Register(clock, backRoom);
        this.idle = new IdleWatch(clock, premises.settings().idle());
        this.comfort = Comfort.usual(premises.settings());
        this.furniture = new Furniture(this);
        this.overlays = new Overlays(this);
        this.aloud = new ReadAloud(this, overlays, speaker);
        root.getStyleClass().add(Styles.SHELL);
        root.getChildren().setAll(furniture.node(), overlays.node());
        var strikes = new Strikes(clock, premises.settings().panel());
        var input = new Input(() -> idle.touched(), strikes, furniture, overlays);
        root.addEventFilter(InputEvent.ANY, event -> input.watch(event, root, scale));
        LockDown.on(root);
    }

    /** Takes over the scene and shows what passers-by see. */
    public void show(Scene scene) {
        scene.setRoot(root);
        inScene = Look.whenResized(scene, () -> change(comfort));
        startOver(new Place.Attract());
    }

    /** Lets go of the scene and drops all work; the frame is of no use any more. */
    public void leave() {
        onShow.leave();
        backRoom.endVisit();
        inScene.unsubscribe();
    }

    /** What the kiosk shows from. */
    public Premises premises() {
        return premises;
    }

    @Override
    public Texts texts() {
        return premises.texts(comfort.language());
    }

    /** Sentences in the shopper's language and units. */
    public Phrases phrases() {
        return new Phrases(texts(), new Quantities(texts().locale(), comfort.metric())::show);
    }

    /** The explainers in the shopper's language. */
    public Library library() {
        return premises.library(comfort.language());
    }

    /** How the shopper likes to read. */
    public Comfort comfort() {
        return comfort;
    }

    /** How millimetres and ems become pixels; for arrangements, everything else is the theme's. */
    public Scale scale() {
        return scale;
    }

    /** Whether the screen is wider than high. */
    public boolean isLandscape() {
        return Look.isLandscape(root.getScene());
    }

    /** How wide the screen is in ems: how much room there is for words. */
    public double widthInEms() {
        return root.getScene().getWidth() / scale.em();
    }

    /** Everything answered so far. */
    public ReadOnlyObjectProperty<Visit> visit() {
        return visit;
    }

    /** What chance there is in the visit, such as the order of answers, comes of; another in each visit. */
    public long seed() {
        return seed;
    }

    /** What it comes to; empty until it has been worked out for the present visit. */
    public ReadOnlyObjectProperty<Optional<Outlook>> outlook() {
        return outlook;
    }

    /** Changes the visit, and has worked out anew what it comes to. */
    public void change(UnaryOperator<Visit> next) {
        visit.set(next.apply(visit.get()));
        workOut();
    }

    private void workOut() {
        outlook.set(Optional.empty());
        backRoom.work("outlook", Outlook.work(premises.showroom(), visit.get(), last), result -> {
            last = Optional.of(result);
            outlook.set(last);
        }, this::failed);
    }

    /** Work off the screen's thread. */
    public BackRoom backRoom() {
        return backRoom;
    }

    /** Tells of a value now and whenever it changes, as long as the present screen is shown. */
    public <T> void follow(ObservableValue<T> value, Consumer<T> told) {
        onShow.follow(value, told);
    }

    /** Goes on; "back" will lead to where the shopper is now. */
    public void go(Place place) {
        Place left = onShow.place(trail.here());
        boolean fresh = left instanceof Place.Attract || place instanceof Place.Home;
        open(fresh ? Trail.startingAt(place) : trail.onward(left, place));
    }

    /** Goes on without leaving a step to come back to: the next question, another list of the same screen. */
    public void goInstead(Place place) {
        open(trail.instead(place));
    }

    /** Goes back to where the shopper was. */
    public void back() {
        open(trail.canGoBack() ? trail.back() : Trail.startingAt(new Place.Home()));
    }

    /** The place shown, as it was opened. */
    public Place here() {
        return trail.here();
    }

    /** Lays a sheet over the screen; it can be closed by a touch. */
    public void lay(String title, Node content) {
        overlays.lay(title, content);
        aloud.laid(title, content);
    }

    /** Takes the sheet away, if there is one. */
    public void lift() {
        overlays.lift();
    }

    /** Lays over the screen what can be done about reading aloud. */
    public void layAloud() {
        aloud.lay();
    }

    /** Counts what is looked at. */
    public Stay counts() {
        return register.stay();
    }

    /** What staff can do with the kiosk as a whole. */
    public Doors doors() {
        return doors;
    }

    /** Ends the visit: everything is forgotten, and the place is shown as to the first shopper of the day. */
    public void startOver(Place place) {
        aloud.visitEnded();
        onShow.leave();
        backRoom.endVisit();
        register.ended(premises, visit.get());
        overlays.clear();
        premises = next;
        idle = new IdleWatch(clock, premises.settings().idle());
        comfort = Comfort.usual(premises.settings());
        visit.set(Visit.NEW);
        seed = new SplittableRandom(clock.millis()).nextLong();
        last = Optional.empty();
        scale = Look.give(root.getScene(), premises.settings().panel().diagonalMetres(), comfort);
        open(Trail.startingAt(place));
        workOut();
    }

    /** Shows everything another way, the shopper staying where they are. */
    public void change(Comfort next) {
        Trail again = trail.instead(onShow.place(trail.here()));
        comfort = next;
        overlays.clear();
        scale = Look.give(root.getScene(), premises.settings().panel().diagonalMetres(), comfort);
        draw(again);
    }

    /** Takes newer premises: at once if nobody is here, else for the next visit. */
    public void offer(Premises newer) {
        next = newer;
        if (isUnattended()) {
            startOver(new Place.Attract());
        }
    }

    boolean isUnattended() {
        return trail.here() instanceof Place.Attract;
    }

    /** Looks at the clock: asks whether anyone is still here, or ends the visit. */
    public void tick() {
        boolean nothingToLose = trail.here() instanceof Place.Home && visit.get().equals(Visit.NEW)
                && comfort.equals(Comfort.usual(premises.settings()));
        IdleWatch.State state = isUnattended() ? new IdleWatch.State.Here() : idle.state();
        if (state instanceof IdleWatch.State.Gone || state instanceof IdleWatch.State.Asking && nothingToLose) {
            register.stay().goneFor(idle.quiet());
            startOver(new Place.Attract());
        } else {
            overlays.follow(state);
        }
    }

    /** The shopper is still here. */
    void stay() {
        idle.touched();
        overlays.stopAsking();
    }

    /** Something went wrong that no screen could deal with: written down without a shopper's words, ends the visit. */
    public void failed(Throwable failure) {
        register.failed(failure);
        startOver(new Place.Attract());
        doors.failed().run();
    }

    private void open(Trail next) {
        register.stay().shown(next.here());
        draw(next);
    }

    private void draw(Trail next) {
        onShow.leave();
        overlays.lift();
        trail = next;
        Screen made = maker.make(doors.passing(next.here()), this);
        onShow.take(made);
        idle.shown(doors.lock().isOpen(), made.words());
        furniture.show(made);
        aloud.shown(made);
    }
}
