package fencerow;

import fencerow.kiosk.Fx;
import fencerow.kiosk.Shown;
import fencerow.kiosk.kit.Touch;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.control.Labeled;
import javafx.stage.Stage;
import org.testfx.api.FxRobot;

/** Somebody in front of the kiosk: reads what is in sight, touches it with a robot's finger, turns pages. */
final class Shopper {
    private static final long PATIENCE = TimeUnit.SECONDS.toMillis(60);
    private static final int MOST_PAGES = 40;

    private final Shown shown;
    private final FxRobot robot = new FxRobot();

    Shopper(Shown shown, Stage stage) {
        this.shown = shown;
        Fx.on(() -> {
            stage.setScene(shown.scene());
            stage.show();
            return true;
        });
    }

    Shown shown() {
        return shown;
    }

    /** Touches what is called so, or begins with it as a sentence of its own; turns the page until it is in sight. */
    void touch(String name) {
        Fx.on(() -> {
            shown.clock().pass(Duration.ofSeconds(1));
            return true;
        });
        waitFor(() -> find(name).isPresent(), "something called [" + name + "]");
        for (int page = 0; page < MOST_PAGES; page++) {
            Optional<Point2D> middle = Fx.on(() -> find(name).flatMap(Shopper::inSight));
            if (middle.isPresent()) {
                robot.clickOn(middle.get());
                return;
            }
            String turn = Fx.on(() -> isAbove(name)) ? "Page up" : "Page down";
            Optional<Point2D> button = Fx.on(() -> find(turn).flatMap(Shopper::inSight));
            shown.clock().pass(Duration.ofSeconds(1));
            robot.clickOn(button.orElseThrow(() -> new AssertionError("[" + name + "] cannot be reached")));
            rest();
        }
        throw new AssertionError("[" + name + "] did not come into sight");
    }

    /** Waits until these words stand somewhere on the screen. */
    void waitForWords(String part) {
        waitFor(() -> words().stream().anyMatch(each -> each.contains(part)), "the words [" + part + "]");
    }

    /** All words on the screen, in and out of sight. */
    List<String> words() {
        List<String> all = new ArrayList<>();
        collect(shown.scene().getRoot(), all);
        return all;
    }

    /** The words in a style. */
    Optional<String> words(String style) {
        return Fx.on(() -> Optional.ofNullable(shown.scene().getRoot().lookup("." + style))
                .filter(Labeled.class::isInstance)
                .map(node -> ((Labeled) node).getText()));
    }

    private void waitFor(Callable<Boolean> condition, String what) {
        long end = System.currentTimeMillis() + PATIENCE;
        while (!Fx.on(condition)) {
            if (System.currentTimeMillis() > end) {
                throw new AssertionError(what + " did not come; there is " + Fx.on(this::words));
            }
            rest();
        }
    }

    private static void rest() {
        try {
            TimeUnit.MILLISECONDS.sleep(250);
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
    }

    private Optional<Touch> find(String name) {
        shown.layOut();
        List<Touch> found = shown.touches().stream()
                .filter(each -> !each.isDisabled())
                .filter(each -> name.equals(each.getAccessibleText())
                        || each.getAccessibleText().startsWith(name + ". ")
                        || name.contains(". ") && each.getAccessibleText().startsWith(name))
                .toList();
        return found.isEmpty() ? Optional.empty() : Optional.of(found.get(found.size() - 1));
    }

    private boolean isAbove(String name) {
        Bounds box = find(name).map(touch -> touch.localToScene(touch.getLayoutBounds())).orElseThrow();
        return box.getMaxY() < shown.scene().getHeight() / 2;
    }

    /** The middle of it on the screen, if it is not behind an edge. */
    private static Optional<Point2D> inSight(Touch touch) {
        Bounds box = touch.localToScene(touch.getLayoutBounds());
        Point2D middle = new Point2D(box.getCenterX(), box.getCenterY());
        for (Parent around = touch.getParent(); around != null; around = around.getParent()) {
            if (around.getClip() != null
                    && !around.localToScene(around.getClip().getBoundsInParent()).contains(middle)) {
                return Optional.empty();
            }
        }
        Bounds screen = touch.localToScreen(touch.getLayoutBounds());
        return Optional.of(new Point2D(screen.getCenterX(), screen.getCenterY()));
    }

    private static void collect(Node node, List<String> all) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled label) {
            all.add(label.getText());
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> collect(child, all));
        }
    }
}
