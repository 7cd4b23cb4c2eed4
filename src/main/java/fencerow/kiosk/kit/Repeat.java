package fencerow.kiosk.kit;

import java.util.function.IntConsumer;
import javafx.animation.PauseTransition;
import javafx.collections.SetChangeListener;
import javafx.css.PseudoClass;
import javafx.util.Duration;

/**
 * One step at a touch, and step after step as long as the finger stays down: slowly at first, then in larger steps. The
 * lifting of a finger that has stepped by staying adds none.
 */
final class Repeat {
    private static final PseudoClass ARMED = PseudoClass.getPseudoClass(Styles.ARMED);
    private static final Duration BEFORE = Duration.millis(600);
    private static final Duration BETWEEN = Duration.millis(140);
    /** After so many steps of one, steps of {@link #LARGE}. */
    private static final int SMALL_STEPS = 12;
    private static final int LARGE = 5;

    private final IntConsumer move;
    private final PauseTransition pause = new PauseTransition(BEFORE);
    private int times;

    Repeat(IntConsumer move) {
        this.move = move;
        pause.setOnFinished(done -> again());
    }

    /** Follows a finger on the button. */
    void watch(Touch touch) {
        touch.getPseudoClassStates().addListener((SetChangeListener<PseudoClass>) change -> {
            if (ARMED.equals(change.getElementAdded())) {
                times = 0;
                pause.setDuration(BEFORE);
                pause.playFromStart();
            } else if (ARMED.equals(change.getElementRemoved())) {
                pause.stop();
            }
        });
    }

    /** The finger was lifted, or a key pressed. */
    void touched() {
        if (times == 0) {
            move.accept(1);
        }
        times = 0;
    }

    private void again() {
        times++;
        pause.setDuration(BETWEEN);
        pause.playFromStart();
        move.accept(times > SMALL_STEPS ? LARGE : 1);
    }
}
