package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.event.Event;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.Test;

/** Every screen of the machine is covered. The second and third screen are parts of the one that tests have. */
class CoverFxTest {
    private static final Rectangle2D LEFT = new Rectangle2D(0, 0, 400, 300);
    private static final Rectangle2D RIGHT = new Rectangle2D(400, 0, 500, 300);

    private static Set<Rectangle2D> shownBeside(Stage kiosk) {
        return Window.getWindows().stream()
                .filter(window -> window.isShowing() && window != kiosk && window.getScene().getRoot()
                        .getChildrenUnmodifiable().isEmpty())
                .map(window -> new Rectangle2D(
                        window.getX(), window.getY(), window.getWidth(), window.getHeight()))
                .collect(Collectors.toSet());
    }

    @Test
    void everyOtherScreenGetsACurtainThatNobodyCanCloseAndNoneStaysWhenItsScreenGoes() {
        Fx.on(() -> {
            Stage kiosk = new Stage();
            kiosk.setScene(new Scene(new StackPane(new StackPane())));
            Cover cover = new Cover(kiosk);
            try {
                cover.draw();
                assertEquals(Set.of(), shownBeside(kiosk), "one screen needs no curtain");

                cover.drawCurtains(List.of(LEFT, RIGHT));
                assertEquals(Set.of(LEFT, RIGHT), shownBeside(kiosk));
                for (Window window : List.copyOf(Window.getWindows())) {
                    if (window != kiosk && window.isShowing()) {
                        WindowEvent close = new WindowEvent(window, WindowEvent.WINDOW_CLOSE_REQUEST);
                        Event.fireEvent(window, close);
                        assertTrue(window.isShowing(), "a curtain was closed");
                    }
                }

                cover.drawCurtains(List.of(RIGHT));
                assertEquals(Set.of(RIGHT), shownBeside(kiosk));
                cover.open();
                assertEquals(Set.of(), shownBeside(kiosk), "the kiosk ended and a curtain stayed");
                return true;
            } finally {
                cover.open();
                kiosk.hide();
            }
        });
    }
}
