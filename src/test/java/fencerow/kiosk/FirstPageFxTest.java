package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Greeting;
import fencerow.kiosk.frame.Opening;
import fencerow.kiosk.frame.Openings;
import fencerow.kiosk.frame.Place;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicReference;
import javafx.scene.AccessibleAction;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import org.junit.jupiter.api.Test;

/** What is there while the kiosk still starts. */
class FirstPageFxTest {
    /** An opening that takes until it is let go on; remembers the greeting like a data folder. */
    private static final class Slow implements Openings {
        private final CountDownLatch held = new CountDownLatch(1);
        private final AtomicReference<Optional<Greeting>> kept = new AtomicReference<>(Optional.empty());
        private final CompletableFuture<Greeting> told = new CompletableFuture<>();

        @Override
        public Opening open() {
            try {
                held.await();
            } catch (InterruptedException e) {
                Thread.currentThread().interrupt();
            }
            return new Opening.Open(Rooms.premises());
        }

        @Override
        public Optional<Opening> findNewer() {
            return Optional.empty();
        }

        @Override
        public Optional<Greeting> findGreeting() {
            return kept.get();
        }

        @Override
        public void keep(Greeting greeting) {
            told.complete(greeting);
        }
    }

    private static boolean says(Scene scene, String words) {
        return scene.getRoot().lookupAll(".label").stream()
                .anyMatch(node -> node instanceof Label label && label.getText().equals(words));
    }

    @Test
    void whoTouchesItIsAskedToWaitAndThenFindsTheStartPage() {
        Greeting greeting;
        Slow first = new Slow();
        first.held.countDown();
        try (LiveKiosk kiosk = LiveKiosk.of(first)) {
            greeting = first.told.join();
            assertEquals("attract", Fx.on(() -> kiosk.frame().here().key()));
        }

        Slow second = new Slow();
        second.kept.set(Optional.of(greeting));
        try (LiveKiosk kiosk = LiveKiosk.opening(second)) {
            Fx.on(() -> {
                Scene scene = kiosk.window().stage().getScene();
                assertTrue(kiosk.window().frame().isEmpty());
                assertTrue(says(scene, greeting.words().get("belief")), "nothing to be seen yet");
                assertTrue(says(scene, greeting.words().get("start")));
                scene.getRoot().lookup(".touch").executeAccessibleAction(AccessibleAction.FIRE);
                assertTrue(says(scene, greeting.words().get("moment")), "a touch is not answered");
                return true;
            });
            second.held.countDown();
            kiosk.waitFor(() -> kiosk.window().frame().isPresent(), "the kiosk");
            assertEquals(new Place.Home(), Fx.on(() -> kiosk.frame().here()));
        }
    }
}
