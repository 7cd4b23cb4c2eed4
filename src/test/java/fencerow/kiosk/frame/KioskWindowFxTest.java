package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.Fx;
import fencerow.kiosk.HandClock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.geometry.Rectangle2D;
import javafx.scene.Cursor;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Region;
import javafx.scene.robot.Robot;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.Test;

/** That nobody gets out of the window but through the staff door. */
class KioskWindowFxTest {
    private static final KioskWindow.Content NOTHING = new KioskWindow.Content(
            new Openings() {
                @Override
                public Opening open() {
                    return new Opening.Closed(List.of("nothing to show"));
                }

                @Override
                public Optional<Opening> findNewer() {
                    return Optional.empty();
                }
            },
            (place, frame) -> {
                throw new IllegalStateException("there is nothing to show");
            },
            (wrong, doors) -> {
                Region page = new Region();
                page.setOnMouseClicked(click -> doors.close().run());
                return page;
            },
            Speaker.NONE);

    private final List<String> closed = new ArrayList<>();

    @Test
    void neitherKeysNorARequestToCloseLeadOutAndStaffDo() {
        KioskWindow window = Fx.on(() -> new KioskWindow(NOTHING, new HandClock(), ending -> closed.add("by staff")));
        Stage stage = Fx.on(() -> {
            window.openFullScreen();
            return window.stage();
        });
        for (KeyCode key : List.of(KeyCode.ESCAPE, KeyCode.F11)) {
            Fx.on(() -> {
                new Robot().keyType(key);
                return true;
            });
        }
        Fx.on(() -> {
            stage.fireEvent(new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
            return true;
        });
        Fx.on(() -> {
            assertTrue(stage.isShowing());
            assertTrue(stage.isFullScreen());
            assertEquals(Cursor.NONE, stage.getScene().getCursor());
            Rectangle2D screen = Screen.getPrimary().getBounds();
            assertEquals(screen.getWidth(), stage.getScene().getWidth());
            assertEquals(screen.getHeight(), stage.getScene().getHeight());
            assertEquals(List.of(), closed);
            return true;
        });
        Fx.on(() -> {
            stage.getScene().getRoot().getOnMouseClicked().handle(null);
            assertFalse(stage.isShowing());
            assertEquals(List.of("by staff"), closed);
            return true;
        });
    }
}
