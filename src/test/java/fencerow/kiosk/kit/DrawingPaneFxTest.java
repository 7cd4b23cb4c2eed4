package fencerow.kiosk.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Bounds;
import fencerow.explainers.Drawing;
import fencerow.explainers.Look;
import fencerow.explainers.Look.Ink;
import fencerow.explainers.Look.Tone;
import fencerow.explainers.Outline;
import fencerow.explainers.Outline.Step;
import fencerow.explainers.Piece;
import fencerow.kiosk.Fx;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.css.PseudoClass;
import javafx.event.Event;
import javafx.event.EventType;
import javafx.scene.AccessibleAction;
import javafx.scene.AccessibleAttribute;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.shape.Shape;
import org.junit.jupiter.api.Test;

/** A drawing of 200 by 100 units, shown at 400 by 300 pixels: twice as large, 50 pixels of room above and below. */
class DrawingPaneFxTest {
    private static final Drawing DRAWING = new Drawing(new Bounds(0, 0, 200, 100), "A test", "", List.of(
            new Piece.Part("loader", List.of(
                    box(20, 20, 120, 80),
                    new Piece.Part("bucket-hooks", List.of(box(60, 40, 64, 44))))),
            new Piece.Part("tire-type", List.of(box(150, 20, 190, 80)))));
    private static final Map<String, String> NAMES = Map.of("loader", "Loader", "bucket-hooks", "Bucket hooks");

    private final List<String> touched = new ArrayList<>();

    private static Piece box(double left, double top, double right, double bottom) {
        return new Piece.Shape(new Outline(List.of(
                new Step.Move(left, top), new Step.Line(right, top), new Step.Line(right, bottom),
                new Step.Line(left, bottom), new Step.Close())), new Look(Ink.LINE, Tone.LIGHT, 2, false));
    }

    private DrawingPane pane() {
        DrawingPane pane = new DrawingPane(DRAWING, "A loader and a tire.").touchable(NAMES, 30, touched::add);
        Scene scene = new Scene(pane, 400, 300);
        scene.getRoot().applyCss();
        scene.getRoot().layout();
        return pane;
    }

    private static void mouse(DrawingPane pane, EventType<MouseEvent> type, double x, double y) {
        Event.fireEvent(pane, new MouseEvent(type, x, y, x, y, MouseButton.PRIMARY, 1, false, false, false, false,
                true, false, false, false, false, true, null));
    }

    private static void touch(DrawingPane pane, double x, double y) {
        mouse(pane, MouseEvent.MOUSE_PRESSED, x, y);
        mouse(pane, MouseEvent.MOUSE_RELEASED, x, y);
    }

    private static <T> void on(Callable<T> work) {
        Fx.on(work);
    }

    private static boolean is(Shape shape, PartMark mark) {
        return shape.getPseudoClassStates().contains(mark.pseudoClass());
    }

    private static List<Shape> shapes(DrawingPane pane) {
        return pane.lookupAll(".ink-line").stream().map(Shape.class::cast).toList();
    }

    @Test
    void whatIsDrawnStandsInTheMiddleInItsProportions() {
        on(() -> {
            javafx.geometry.Bounds seen = shapes(pane()).get(0).localToScene(shapes(pane()).get(0).getLayoutBounds());
            // 20 to 120 across and 20 to 80 down, twice as large, half a line's width on each side; JavaFX adds 1 px.
            assertEquals(38, seen.getMinX(), 1.1);
            assertEquals(242, seen.getMaxX(), 1.1);
            assertEquals(88, seen.getMinY(), 1.1);
            assertEquals(212, seen.getMaxY(), 1.1);
            return true;
        });
    }

    @Test
    void itAsksForTheHeightThatGoesWithItsWidth() {
        on(() -> {
            assertEquals(300, pane().prefHeight(600), 0.5);
            return true;
        });
    }

    @Test
    void aTouchMeansThePartThatIsSeenThere() {
        on(() -> {
            DrawingPane pane = pane();
            touch(pane, 2 * 30, 50 + 2 * 70);
            touch(pane, 2 * 62, 50 + 2 * 42);
            assertEquals(List.of("loader", "bucket-hooks"), touched);
            return true;
        });
    }

    @Test
    void aTouchNearASmallPartMeansThatPart() {
        on(() -> {
            DrawingPane pane = pane();
            // With its line the box is 12 pixels thick; a finger needs 30, so it reaches 9 pixels beyond the line.
            touch(pane, 2 * 64 + 2 + 8, 50 + 2 * 42);
            touch(pane, 2 * 64 + 2 + 10, 50 + 2 * 42);
            assertEquals(List.of("bucket-hooks", "loader"), touched);
            return true;
        });
    }

    @Test
    void nothingHappensWhereNoPartIsOrThePartHasNoName() {
        on(() -> {
            DrawingPane pane = pane();
            touch(pane, 5, 5);
            touch(pane, 2 * 170, 50 + 2 * 50);
            assertEquals(List.of(), touched);
            assertEquals(Optional.of("tire-type"), pane.partAt(2 * 170, 50 + 2 * 50));
            return true;
        });
    }

    @Test
    void slidingOffOrDraggingThePageCallsTheTouchOff() {
        on(() -> {
            DrawingPane pane = pane();
            mouse(pane, MouseEvent.MOUSE_PRESSED, 60, 190);
            mouse(pane, MouseEvent.MOUSE_DRAGGED, 5, 5);
            mouse(pane, MouseEvent.MOUSE_RELEASED, 60, 190);
            mouse(pane, MouseEvent.MOUSE_PRESSED, 60, 190);
            pane.letGo();
            mouse(pane, MouseEvent.MOUSE_RELEASED, 60, 190);
            assertEquals(List.of(), touched);
            return true;
        });
    }

    @Test
    void theTouchedPartShowsItWhileTheFingerIsDown() {
        on(() -> {
            DrawingPane pane = pane();
            PseudoClass armed = PseudoClass.getPseudoClass(Styles.ARMED);
            mouse(pane, MouseEvent.MOUSE_PRESSED, 60, 190);
            assertEquals(List.of(true, true, false),
                    shapes(pane).stream().map(each -> each.getPseudoClassStates().contains(armed)).toList());
            mouse(pane, MouseEvent.MOUSE_RELEASED, 60, 190);
            assertTrue(shapes(pane).stream().noneMatch(each -> each.getPseudoClassStates().contains(armed)));
            return true;
        });
    }

    @Test
    void aMarkCoversThePartsWithinUnlessTheyHaveTheirOwn() {
        on(() -> {
            DrawingPane pane = pane();
            pane.mark(Map.of("loader", PartMark.FITTED));
            assertEquals(List.of(true, true, false),
                    shapes(pane).stream().map(each -> is(each, PartMark.FITTED)).toList());
            pane.mark(Map.of("loader", PartMark.FITTED, "bucket-hooks", PartMark.MISSING));
            assertEquals(List.of(true, false, false),
                    shapes(pane).stream().map(each -> is(each, PartMark.FITTED)).toList());
            assertTrue(is(shapes(pane).get(1), PartMark.MISSING));
            pane.light(List.of("tire-type"));
            assertEquals(List.of(false, false, true),
                    shapes(pane).stream().map(each -> is(each, PartMark.LIT)).toList());
            assertFalse(is(shapes(pane).get(1), PartMark.MISSING));
            return true;
        });
    }

    @Test
    void everyPartWithANameIsAButtonForKeysAndAssistiveTools() {
        on(() -> {
            DrawingPane pane = pane();
            assertEquals("A loader and a tire.", pane.queryAccessibleAttribute(AccessibleAttribute.TEXT));
            assertEquals(AccessibleRole.IMAGE_VIEW, pane.getAccessibleRole());
            List<Node> parts = List.copyOf(pane.lookupAll(".part"));
            assertEquals(3, parts.size());
            assertEquals("Loader", parts.get(0).getAccessibleText());
            assertEquals(AccessibleRole.BUTTON, parts.get(0).getAccessibleRole());
            assertTrue(parts.get(1).isFocusTraversable());
            assertFalse(parts.get(2).isFocusTraversable());
            Event.fireEvent(parts.get(1), new KeyEvent(
                    KeyEvent.KEY_PRESSED, "", "", KeyCode.ENTER, false, false, false, false));
            parts.get(0).executeAccessibleAction(AccessibleAction.FIRE);
            assertEquals(List.of("bucket-hooks", "loader"), touched);
            return true;
        });
    }
}
