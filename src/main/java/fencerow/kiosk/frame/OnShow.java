package fencerow.kiosk.frame;

import java.util.Optional;
import java.util.function.Consumer;
import javafx.beans.value.ObservableValue;
import javafx.util.Subscription;

/** The screen that is shown, and what it follows as long as it is. Confined to the screen's thread. */
final class OnShow {
    private Optional<Screen> screen = Optional.empty();
    private Subscription followed = Subscription.EMPTY;

    void take(Screen made) {
        screen = Optional.of(made);
    }

    /** Tells of a value now and whenever it changes, as long as the screen is shown. */
    <T> void follow(ObservableValue<T> value, Consumer<T> told) {
        Subscription one = value.subscribe(told);
        followed = Subscription.combine(followed, one);
    }

    /** The screen's place as it is now; where there is none, the other. */
    Place place(Place otherwise) {
        return screen.map(Screen::place).orElse(otherwise);
    }

    /** The screen is left for good. */
    void leave() {
        Optional<Screen> left = screen;
        screen = Optional.empty();
        left.ifPresent(Screen::left);
        followed.unsubscribe();
        followed = Subscription.EMPTY;
    }
}
