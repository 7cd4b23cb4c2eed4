package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Styles;
import fencerow.kiosk.kit.TextSize;
import fencerow.kiosk.kit.Touch;
import fencerow.visit.Visit;
import java.time.Duration;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.testfx.api.FxToolkit;

/** What a finger, and a keypad, do and do not do; with a robot's. Touch screens of Linux give mouse events. */
class FingerFxTest {
    private static final int WIDTH = 1920;
    private static final int HEIGHT = 1080;

    private Shown shown = Fx.on(() -> Shown.of(Rooms.premises(), WIDTH, HEIGHT));
    private Stage stage = Fx.on(FxToolkit::registerPrimaryStage);

    @BeforeEach
    void open() {
        run(() -> {
            stage.setScene(shown.scene());
            stage.show();
            shown.frame().go(new Place.Home());
            shown.layOut();
        });
    }

    @AfterEach
    void close() {
        run(() -> {
            shown.frame().leave();
            stage.hide();
        });
    }

    private static void run(Runnable step) {
        Fx.on(() -> {
            step.run();
            return true;
        });
    }

    /** A robot's event arrives after the step that made it. */
    private static void robot(Consumer<Robot> step) {
        run(() -> step.accept(new Robot()));
        run(() -> {});
        run(() -> {});
    }

    private Point2D at(String name) {
        return Fx.on(() -> {
            shown.layOut();
            Touch touch = shown.touches().stream()
                    .filter(each -> each.getAccessibleText().startsWith(name)).findFirst().orElseThrow();
            Bounds box = touch.localToScreen(touch.getLayoutBounds());
            return new Point2D(box.getCenterX(), box.getCenterY());
        });
    }

    private Point2D onScreen(double x, double y) {
        return Fx.on(() -> shown.scene().getRoot().localToScreen(x, y));
    }

    private static void press(Point2D point) {
        robot(robot -> robot.mouseMove(point));
        robot(robot -> robot.mousePress(MouseButton.PRIMARY));
    }

    private static void release() {
        robot(robot -> robot.mouseRelease(MouseButton.PRIMARY));
    }

    private void touch(Point2D point) {
        shown.clock().pass(Duration.ofSeconds(1));
        press(point);
        release();
    }

    private TextSize textSize() {
        return Fx.on(() -> shown.frame().comfort().textSize());
    }

    @Test
    void nothingHappensBeforeTheFingerIsLiftedAndSlidingOffCallsItOff() {
        Point2D point = at("Text size");
        press(point);
        assertEquals(TextSize.NORMAL, textSize(), "on putting the finger down");
        robot(robot -> robot.mouseMove(point.add(0, -300)));
        release();
        assertEquals(TextSize.NORMAL, textSize(), "after sliding off");
        touch(point);
        assertEquals(TextSize.LARGE, textSize());
    }

    @Test
    void draggingMovesThePageAndTouchesNothing() {
        run(() -> shown.frame().change(shown.frame().comfort().withTextSize(TextSize.DOUBLE)));
        Point2D start = at("Learn");
        Column column = Fx.on(() -> (Column) shown.scene().getRoot().lookup(".column"));
        press(start);
        for (int i = 1; i <= 8; i++) {
            double moved = -10.0 * i;
            robot(robot -> robot.mouseMove(start.add(0, moved)));
        }
        release();
        assertTrue(Fx.on(column::position) > 0, "the page has moved");
        assertEquals(new Place.Home(), Fx.on(() -> shown.frame().here()));
    }

    @Test
    void aSecondButtonALongHoldAndARestingFingerBringNothingUp() throws InterruptedException {
        Point2D point = at("Learn");
        robot(robot -> robot.mouseMove(point));
        robot(robot -> robot.mousePress(MouseButton.SECONDARY));
        robot(robot -> robot.mouseRelease(MouseButton.SECONDARY));
        TimeUnit.MILLISECONDS.sleep(1500);
        assertInstanceOf(Place.Home.class, Fx.on(() -> shown.frame().here()));
        press(point);
        TimeUnit.MILLISECONDS.sleep(1500);
        assertEquals(1, Fx.on(() -> Window.getWindows().size()));
        robot(robot -> robot.mouseMove(point.add(0, 500)));
        release();
        assertInstanceOf(Place.Home.class, Fx.on(() -> shown.frame().here()));
    }

    @Test
    void aFingerThatBouncesTouchesOnce() {
        Point2D point = at("Text size");
        touch(point);
        press(point);
        release();
        assertEquals(TextSize.LARGE, textSize());
        shown.clock().pass(Rooms.premises().settings().panel().doubleTouch());
        press(at("Text size"));
        release();
        assertEquals(TextSize.DOUBLE, textSize(), "a second touch after the guard's time counts");
    }

    @Test
    void aTouchAnywhereStartsAndTouchesNothingElse() {
        for (int x = 1; x <= 3; x++) {
            for (int y = 1; y <= 3; y++) {
                Point2D point = onScreen(WIDTH * (x - 0.5) / 3, HEIGHT * (y - 0.5) / 3);
                run(() -> shown.frame().startOver(new Place.Attract()));
                run(shown::layOut);
                touch(point);
                assertEquals(new Place.Home(), Fx.on(() -> shown.frame().here()), "at " + point);
                assertEquals(Visit.NEW, Fx.on(() -> shown.frame().visit().get()));
            }
        }
    }

    @Test
    void typingOpensNoSecondWindow() {
        run(() -> shown.frame().go(Place.Find.EMPTY));
        touch(at("q"));
        assertEquals(1, Fx.on(() -> Window.getWindows().size()));
        assertFalse(Platform.isSupported(ConditionalFeature.VIRTUAL_KEYBOARD));
    }

    @Test
    void keysReachEverythingInTurnAndComeRoundAgain() {
        for (Place place : List.of(new Place.Home(), Place.Questions.NEXT, Place.Results.TOP, Place.Find.EMPTY)) {
            run(() -> shown.frame().go(place));
            assertEquals(reachable(), walkByKeys(), "at " + place.key());
        }
    }

    @Test
    void keysStayOnASheetAndAHeldKeyTouchesOnce() {
        run(() -> shown.touch("Help"));
        Set<Node> reached = walkByKeys();
        assertFalse(reached.isEmpty());
        assertTrue(reached.stream().noneMatch(node -> "Start over".equals(node.getAccessibleText())),
                "below the sheet");

        run(() -> shown.touch("Close"));
        run(() -> shown.touches().stream().filter(each -> "Text size".equals(each.getAccessibleText()))
                .findFirst().orElseThrow().requestFocus());
        for (int i = 0; i < 5; i++) {
            robot(robot -> robot.keyPress(KeyCode.ENTER));
        }
        assertEquals(TextSize.NORMAL, textSize());
        robot(robot -> robot.keyRelease(KeyCode.ENTER));
        assertEquals(TextSize.LARGE, textSize());
    }

    /** But for the buttons that turn pages, which come and go while the keys move the page. */
    private Set<Node> reachable() {
        return Fx.on(() -> {
            shown.layOut();
            Set<Node> all = new HashSet<>();
            shown.touches().stream()
                    .filter(each -> !each.isDisabled() && !each.getStyleClass().contains(Styles.GUTTER))
                    .forEach(all::add);
            all.addAll(shown.scene().getRoot().lookupAll(".drawing .part").stream()
                    .filter(Node::isFocusTraversable).toList());
            return all;
        });
    }

    /** Presses Tab until the focus comes round; each stop must be in sight and show that it is the one. */
    private Set<Node> walkByKeys() {
        return Fx.on(() -> {
            List<Node> stops = new ArrayList<>();
            while (true) {
                Node owner = tab();
                if (stops.contains(owner) || stops.size() > 200) {
                    assertEquals(stops.get(0), owner, "the way comes round to where it began");
                    stops.removeIf(stop -> stop.getStyleClass().contains(Styles.GUTTER));
                    return new HashSet<>(stops);
                }
                owner.applyCss();
                assertFalse(LayoutRules.visible(owner).isEmpty(), () -> LayoutRules.name(owner) + " is out of sight");
                if (owner instanceof Touch touch) {
                    assertTrue(touch.getBorder() != null && touch.getBorder().getInsets().getTop() == 0,
                            () -> LayoutRules.name(owner) + " does not show that it has the focus");
                }
                stops.add(owner);
            }
        });
    }

    private Node tab() {
        Node from = Optional.ofNullable(shown.scene().getFocusOwner()).orElse(shown.scene().getRoot());
        Event.fireEvent(from, new KeyEvent(
                KeyEvent.KEY_PRESSED, "\t", "", KeyCode.TAB, false, false, false, false));
        return shown.scene().getFocusOwner();
    }
}
