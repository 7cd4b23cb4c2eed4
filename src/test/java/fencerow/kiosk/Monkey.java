package fencerow.kiosk;

import fencerow.kiosk.frame.Comfort;
import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Touch;
import fencerow.visit.Visit;
import java.time.Duration;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.Set;
import java.util.TreeMap;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Point2D;
import javafx.scene.AccessibleAction;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.Screen;
import javafx.stage.Window;

/**
 * Somebody who touches everything without sense: taps, drags, keys, waits. What it does follows from the seed and from
 * what is in sight. After each action the kiosk must still be there, whole, and with a way home; after each new start
 * nothing of the visit may be left.
 */
final class Monkey implements AutoCloseable {
    private static final int REMEMBERED = 25;
    private static final int HANGS_SECONDS = 10;
    private static final int ACTIONS_A_VISIT = 40;
    private static final List<KeyCode> KEYS = List.of(KeyCode.TAB, KeyCode.ENTER, KeyCode.SPACE, KeyCode.ESCAPE,
            KeyCode.F1, KeyCode.F4, KeyCode.F5, KeyCode.F10, KeyCode.F11, KeyCode.F12, KeyCode.UP, KeyCode.DOWN,
            KeyCode.LEFT, KeyCode.RIGHT, KeyCode.PAGE_DOWN, KeyCode.HOME, KeyCode.DELETE, KeyCode.BACK_SPACE, KeyCode.A,
            KeyCode.Q, KeyCode.Z, KeyCode.DIGIT7, KeyCode.CONTEXT_MENU);
    private static final List<KeyCode> HELD = List.of(KeyCode.ALT, KeyCode.CONTROL, KeyCode.SHIFT);

    private final LiveKiosk kiosk;
    private final long seed;
    private final Random random;
    private final Deque<String> last = new ArrayDeque<>();
    private final Map<String, Integer> counts = new TreeMap<>();
    private final Map<String, Integer> places = new TreeMap<>();
    private final List<String> failures = new ArrayList<>();
    private final Logger log = Logger.getLogger("fencerow.kiosk.frame");
    private final Robot robot = on(Robot::new);
    private final Handler ear = new Handler() {
        @Override
        public void publish(LogRecord line) {
            if (line.getLevel().intValue() >= Level.SEVERE.intValue()) {
                failures.add(line.getMessage());
            }
        }

        @Override
        public void flush() {}

        @Override
        public void close() {}
    };

    Monkey(LiveKiosk kiosk, long seed) {
        this.kiosk = kiosk;
        this.seed = seed;
        this.random = new Random(seed);
        log.addHandler(ear);
    }

    /** Does so many things; what it did and saw, as lines. */
    List<String> run(int actions) {
        long start = System.nanoTime();
        for (int i = 1; i <= actions; i++) {
            String did = act(i);
            last.addLast(did);
            if (last.size() > REMEMBERED) {
                last.removeFirst();
            }
            on(() -> true);
            on(() -> {
                check();
                return true;
            });
        }
        double milliseconds = (System.nanoTime() - start) / 1e6;
        return List.of(
                "seed " + seed + ": " + actions + " actions, " + Math.round(milliseconds / 1000) + " s, "
                        + Math.round(milliseconds / actions * 10) / 10.0 + " ms an action",
                "actions " + counts, "screens after them " + places);
    }

    private String act(int number) {
        if (number % ACTIONS_A_VISIT == 0) {
            return startOver();
        }
        int dice = random.nextInt(100);
        if (dice < 66) {
            return tap();
        }
        if (dice < 76) {
            Point2D point = anywhere();
            return click("point", "at " + point, point);
        }
        if (dice < 86) {
            return drag();
        }
        if (dice < 97) {
            return key();
        }
        return waitAWhile();
    }

    private String tap() {
        Optional<Touch> chosen = on(() -> {
            List<Touch> all = inSight();
            return all.isEmpty() ? Optional.empty() : Optional.of(all.get(random.nextInt(all.size())));
        });
        if (chosen.isEmpty()) {
            return "nothing to touch";
        }
        Point2D middle = on(() -> middle(chosen.get()));
        return click("touch", "[" + on(chosen.get()::getAccessibleText) + "]", middle);
    }

    private String click(String kind, String what, Point2D point) {
        count(kind);
        on(() -> {
            robot.mouseMove(point);
            robot.mousePress(MouseButton.PRIMARY);
            return true;
        });
        on(() -> {
            robot.mouseRelease(MouseButton.PRIMARY);
            return true;
        });
        return kind + " " + what;
    }

    private String drag() {
        count("drag");
        Point2D from = anywhere();
        Point2D to = anywhere();
        on(() -> {
            robot.mouseMove(from);
            robot.mousePress(MouseButton.PRIMARY);
            return true;
        });
        for (int step = 1; step <= 4; step++) {
            Point2D there = from.interpolate(to, step / 4.0);
            on(() -> {
                robot.mouseMove(there);
                return true;
            });
        }
        on(() -> {
            robot.mouseRelease(MouseButton.PRIMARY);
            return true;
        });
        return "drag " + from + " to " + to;
    }

    private String key() {
        count("key");
        KeyCode key = KEYS.get(random.nextInt(KEYS.size()));
        Optional<KeyCode> held = random.nextInt(4) == 0
                ? Optional.of(HELD.get(random.nextInt(HELD.size())))
                : Optional.empty();
        on(() -> {
            held.ifPresent(robot::keyPress);
            robot.keyPress(key);
            robot.keyRelease(key);
            held.ifPresent(robot::keyRelease);
            return true;
        });
        return "key " + held.map(each -> each + "+").orElse("") + key;
    }

    /** Nobody comes for a while; the kiosk's own clock is moved on by hand. */
    private String waitAWhile() {
        count("wait");
        int seconds = 5 + random.nextInt(120);
        on(() -> {
            kiosk.clock().pass(Duration.ofSeconds(seconds));
            kiosk.frame().tick();
            return true;
        });
        return "wait " + seconds + " s";
    }

    /** One touch on "start over" where it is, else the wait until the kiosk does so itself. */
    private String startOver() {
        count("start over");
        on(() -> {
            Frame frame = kiosk.frame();
            frame.lift();
            Optional<Touch> button = kiosk.shown().touches().stream()
                    .filter(each -> frame.say("strip.start-over").equals(each.getAccessibleText()))
                    .findFirst();
            if (button.isPresent()) {
                button.get().executeAccessibleAction(AccessibleAction.FIRE);
            } else {
                frame.startOver(new Place.Home());
            }
            return true;
        });
        on(() -> {
            Frame frame = kiosk.frame();
            require(frame.visit().get().equals(Visit.NEW), "answers of the last visit are left");
            Comfort comfort = frame.comfort();
            require(comfort.language().equals(frame.premises().settings().languages().get(0))
                    && !comfort.highContrast() && comfort.textSize().factor() == 1, "comfort is left: " + comfort);
            require(frame.here().equals(new Place.Home()), "not at home but at " + frame.here());
            frame.back();
            require(frame.here().equals(new Place.Home()), "a way back into the last visit is left");
            return true;
        });
        return "start over";
    }

    private void check() {
        require(failures.isEmpty(), "something failed: " + failures);
        require(kiosk.window().ending().isEmpty(), "the kiosk has ended: " + kiosk.window().ending());
        Scene scene = kiosk.window().stage().getScene();
        require(kiosk.window().stage().isShowing(), "the window is gone");
        require(scene.getWidth() == Screen.getPrimary().getBounds().getWidth(), "the screen is not covered");
        require(Window.getWindows().stream().filter(Window::isShowing).count() == 1, "there is another window");
        Frame frame = kiosk.frame();
        places.merge(frame.here().key(), 1, Integer::sum);
        List<Touch> all = kiosk.shown().touches();
        require(all.stream().anyMatch(each -> !each.isDisabled()), "nothing can be touched: a dead end");
        boolean attract = frame.here() instanceof Place.Attract;
        Set<String> waysHome = Set.of(frame.say("header.home"), frame.say("strip.start-over"));
        require(attract || all.stream().anyMatch(each -> waysHome.contains(each.getAccessibleText())),
                "there is no way home from " + frame.here().key());
    }

    private void require(boolean so, String what) {
        if (!so) {
            throw new AssertionError("seed " + seed + ": " + what + "; the last actions were " + last);
        }
    }

    private void count(String kind) {
        counts.merge(kind, 1, Integer::sum);
    }

    private Point2D anywhere() {
        Scene scene = kiosk.window().stage().getScene();
        return new Point2D(random.nextInt((int) scene.getWidth()), random.nextInt((int) scene.getHeight()));
    }

    private List<Touch> inSight() {
        return kiosk.shown().touches().stream().filter(each -> !each.isDisabled()).filter(Monkey::isInSight).toList();
    }

    private static boolean isInSight(Touch touch) {
        Bounds box = touch.localToScene(touch.getLayoutBounds());
        Point2D middle = new Point2D(box.getCenterX(), box.getCenterY());
        for (Parent around = touch.getParent(); around != null; around = around.getParent()) {
            if (around.getClip() != null && !around.localToScene(around.getClip().getBoundsInParent())
                    .contains(middle)) {
                return false;
            }
        }
        return middle.getX() >= 0 && middle.getX() < touch.getScene().getWidth()
                && middle.getY() >= 0 && middle.getY() < touch.getScene().getHeight();
    }

    private static Point2D middle(Touch touch) {
        Bounds box = touch.localToScreen(touch.getLayoutBounds());
        return box == null ? new Point2D(1, 1) : new Point2D(box.getCenterX(), box.getCenterY());
    }

    private static <T> T on(Callable<T> work) {
        FutureTask<T> task = new FutureTask<>(work);
        if (Platform.isFxApplicationThread()) {
            task.run();
        } else {
            Platform.runLater(task);
        }
        try {
            return task.get(HANGS_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof AssertionError error) {
                throw error;
            }
            throw new AssertionError("failed on the screen's thread", e.getCause());
        } catch (InterruptedException | TimeoutException e) {
            throw new AssertionError("the screen did not answer for " + HANGS_SECONDS + " s", e);
        }
    }

    @Override
    public void close() {
        log.removeHandler(ear);
    }
}
