package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Ending;
import fencerow.kiosk.frame.Openings;
import fencerow.kiosk.frame.Place;
import fencerow.needs.Answer;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.visit.Visit;
import java.util.List;
import java.util.Optional;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.scene.robot.Robot;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;
import javafx.stage.WindowEvent;
import org.junit.jupiter.api.Test;

/** The kiosk by itself: it can't be left, and what goes wrong ends a visit, never the kiosk, until it goes too far. */
class UnattendedFxTest {
    private static final Openings DEMO = LiveKiosk.demo();

    private static void startVisit(LiveKiosk kiosk) {
        kiosk.frame().go(new Place.Home());
        kiosk.frame().change(visit -> visit.answered(
                new QuestionId("jobs"), new Answer.Chosen(List.of(new OptionId("clear-snow")))));
    }

    private static void throwOnTheScreensThread() {
        Platform.runLater(() -> {
            throw new IllegalStateException("thrown by a test");
        });
        Fx.on(() -> true);
    }

    @Test
    void noKeyMenuOrCloseRequestLeavesTheKioskAndItsSceneCoversTheScreen() {
        try (LiveKiosk kiosk = LiveKiosk.of(DEMO)) {
            Fx.on(() -> {
                startVisit(kiosk);
                Stage stage = kiosk.window().stage();
                Robot robot = new Robot();
                for (KeyCode key : List.of(KeyCode.ESCAPE, KeyCode.F11, KeyCode.F10, KeyCode.CONTEXT_MENU)) {
                    robot.keyPress(key);
                    robot.keyRelease(key);
                }
                robot.keyPress(KeyCode.ALT);
                robot.keyPress(KeyCode.F4);
                robot.keyRelease(KeyCode.F4);
                robot.keyRelease(KeyCode.ALT);
                Event.fireEvent(stage, new WindowEvent(stage, WindowEvent.WINDOW_CLOSE_REQUEST));
                return true;
            });
            Fx.on(() -> {
                Stage stage = kiosk.window().stage();
                Scene scene = stage.getScene();
                assertTrue(stage.isShowing() && stage.isFullScreen());
                assertEquals(Screen.getPrimary().getBounds().getWidth(), scene.getWidth());
                assertEquals(Screen.getPrimary().getBounds().getHeight(), scene.getHeight());
                assertTrue(Window.getWindows().stream().filter(Window::isShowing).allMatch(stage::equals),
                        () -> "other windows: " + Window.getWindows());
                return true;
            });
            assertEquals(Optional.empty(), kiosk.window().ending());
        }
    }

    @Test
    void menusAndDropsNeverReachAScreen() {
        try (LiveKiosk kiosk = LiveKiosk.of(DEMO)) {
            boolean[] reached = {false};
            Fx.on(() -> {
                Node root = kiosk.window().stage().getScene().getRoot();
                Node inside = root.lookupAll("*").stream().filter(node -> node != root).findFirst().orElseThrow();
                inside.addEventHandler(ContextMenuEvent.ANY, event -> reached[0] = true);
                Event.fireEvent(inside, new ContextMenuEvent(
                        ContextMenuEvent.CONTEXT_MENU_REQUESTED, 5, 5, 5, 5, false, null));
                return true;
            });
            assertFalse(reached[0]);
        }
    }

    @Test
    void aFailureEndsTheVisitAndTheFifthInTenMinutesTheProcess() {
        try (LiveKiosk kiosk = LiveKiosk.of(DEMO)) {
            for (int i = 1; i <= 4; i++) {
                Fx.on(() -> {
                    startVisit(kiosk);
                    return true;
                });
                throwOnTheScreensThread();
                Fx.on(() -> {
                    assertEquals(new Place.Attract(), kiosk.frame().here());
                    assertEquals(Visit.NEW, kiosk.frame().visit().get());
                    return true;
                });
                assertEquals(Optional.empty(), kiosk.window().ending());
            }
            throwOnTheScreensThread();
            assertEquals(Optional.of(Ending.AGAIN), kiosk.window().ending());
        }
    }
}
