package fencerow.kiosk.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import javafx.css.PseudoClass;
import javafx.scene.layout.Pane;
import org.junit.jupiter.api.Test;

/** A finger that touches, stays, and is lifted. */
class RepeatFxTest {
    private static final PseudoClass ARMED = PseudoClass.getPseudoClass(Styles.ARMED);

    private static final class Finger {
        private final List<Integer> steps = Collections.synchronizedList(new ArrayList<>());
        private final CountDownLatch many = new CountDownLatch(14);
        private final Repeat repeat = new Repeat(step -> {
            steps.add(step);
            many.countDown();
        });
        private final Touch touch = new Touch("more", new Pane(), repeat::touched);

        Finger() {
            repeat.watch(touch);
        }

        void down(boolean is) {
            Fx.on(() -> {
                touch.pseudoClassStateChanged(ARMED, is);
                return true;
            });
        }

        void lifted() {
            down(false);
            Fx.on(() -> {
                repeat.touched();
                return true;
            });
        }
    }

    @Test
    void aTouchIsOneStepAndEveryTouchIsOne() {
        Finger finger = new Finger();
        for (int i = 0; i < 3; i++) {
            finger.down(true);
            finger.lifted();
        }
        assertEquals(List.of(1, 1, 1), finger.steps);
    }

    @Test
    void aFingerThatStaysStepsOnInLargerStepsAndItsLiftingAddsNone() throws InterruptedException {
        Finger finger = new Finger();
        finger.down(true);
        assertTrue(finger.many.await(30, TimeUnit.SECONDS), () -> "only " + finger.steps);
        finger.down(false);
        List<Integer> stepped = List.copyOf(finger.steps);
        finger.lifted();
        assertEquals(stepped, finger.steps);
        assertEquals(Collections.nCopies(12, 1), stepped.subList(0, 12));
        assertTrue(stepped.subList(12, stepped.size()).stream().allMatch(step -> step > 1), stepped.toString());

        finger.down(true);
        finger.lifted();
        assertEquals(1, finger.steps.get(finger.steps.size() - 1));
        assertEquals(stepped.size() + 1, finger.steps.size());
    }
}
