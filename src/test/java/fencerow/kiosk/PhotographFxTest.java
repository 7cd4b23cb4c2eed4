package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.UnitPictures;
import fencerow.kiosk.frame.Workshop;
import fencerow.kiosk.kit.TextSize;
import fencerow.kiosk.kit.Touch;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.image.ImageView;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Photographs on the cards of what fits: they come after the cards, and nothing waits or moves for them. */
@Timeout(120)
class PhotographFxTest {
    private final CountDownLatch mayBeRead = new CountDownLatch(1);
    private final AtomicBoolean readOnTheScreensThread = new AtomicBoolean();

    /** Pictures on a slow disk. */
    private final UnitPictures slow = new UnitPictures() {
        private final UnitPictures pictures = new ScriptedPictures();

        @Override
        public List<String> names() {
            return pictures.names();
        }

        @Override
        public boolean has(UnitId unit) {
            return pictures.has(unit);
        }

        @Override
        public Optional<byte[]> find(UnitId unit) {
            readOnTheScreensThread.compareAndSet(false, Platform.isFxApplicationThread());
            try {
                mayBeRead.await();
            } catch (InterruptedException e) {
                throw new IllegalStateException(e);
            }
            return pictures.find(unit);
        }

        @Override
        public Optional<String> findFault(String name) {
            return pictures.findFault(name);
        }
    };

    @ParameterizedTest
    @CsvSource({"1920, 1080, NORMAL", "1920, 1080, LARGE", "1080, 1920, NORMAL", "1080, 1920, DOUBLE"})
    void aPhotographComesIntoItsPlaceAndNothingMoves(int width, int height, TextSize textSize) throws Exception {
        Premises demo = Rooms.premises();
        Premises premises = demo.with(demo.showroom(), demo.problems(), demo.desk(), slow);
        try (Workshop workshop = new Workshop()) {
            Shown shown = Fx.on(() -> {
                Shown fresh = Shown.of(premises, width, height, workshop.backRoom());
                fresh.frame().change(new Comfort("en", textSize, false, false, false));
                fresh.frame().change(visit -> MatchPlaces.longDrive());
                fresh.frame().go(Place.Results.TOP);
                return fresh;
            });
            waitFor(() -> !cards(shown).isEmpty(), "the cards");
            List<Bounds> before = Fx.on(() -> boxes(shown));
            assertEquals(0, Fx.on(() -> pictures(shown)).size(), "before the files are read");

            mayBeRead.countDown();
            waitFor(() -> !pictures(shown).isEmpty(), "a photograph");
            assertEquals(before, Fx.on(() -> boxes(shown)), "words and buttons stay where they were");
            assertFalse(readOnTheScreensThread.get());

            ImageView picture = Fx.on(() -> pictures(shown)).get(0);
            Bounds box = Fx.on(() -> picture.localToScene(picture.getLayoutBounds()));
            Node card = Fx.on(() -> cards(shown)).get(0);
            assertTrue(card.localToScene(card.getLayoutBounds()).contains(box), "it is on its card: " + box);
            assertTrue(before.stream().noneMatch(box::intersects), () -> box + " covers something");
            assertTrue(picture.getImage().getWidth() <= Math.ceil(shown.frame().scale().em() * 8)
                            && picture.getImage().getHeight() <= Math.ceil(shown.frame().scale().em() * 8),
                    "it is kept no larger than it is shown");
            assertEquals(1600.0 / 1067, box.getWidth() / box.getHeight(), 0.03, "it is not pulled out of shape");
            Fx.on(() -> {
                shown.frame().leave();
                return true;
            });
        }
    }

    private static void waitFor(Callable<Boolean> so, String what) throws InterruptedException {
        for (int i = 0; !Fx.on(so); i++) {
            assertTrue(i < 600, what + " did not come");
            TimeUnit.MILLISECONDS.sleep(100);
        }
    }

    private static List<Node> cards(Shown shown) {
        shown.layOut();
        return List.copyOf(shown.scene().getRoot().lookupAll(".unit-card"));
    }

    private static List<ImageView> pictures(Shown shown) {
        return cards(shown).stream().flatMap(card -> card.lookupAll(".image-view").stream())
                .map(ImageView.class::cast).toList();
    }

    /** Where all words and buttons of the cards are, and the cards themselves last. */
    private static List<Bounds> boxes(Shown shown) {
        List<Bounds> boxes = new ArrayList<>();
        for (Node card : cards(shown)) {
            card.lookupAll("*").stream().filter(node -> node instanceof Label || node instanceof Touch)
                    .forEach(node -> boxes.add(node.localToScene(node.getLayoutBounds())));
        }
        return boxes;
    }
}
