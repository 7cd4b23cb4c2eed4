package fencerow.kiosk;

import fencerow.kiosk.frame.Frame;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.frame.Workshop;
import fencerow.kiosk.kit.Column;
import fencerow.kiosk.kit.Touch;
import fencerow.terms.TopicId;
import fencerow.terms.UnitId;
import fencerow.visit.Visit;
import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.concurrent.CompletableFuture;
import java.util.function.IntConsumer;
import java.util.stream.Collectors;
import javafx.animation.AnimationTimer;
import javafx.application.Platform;
import javafx.geometry.Point2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.input.MouseButton;
import javafx.scene.input.ScrollEvent;
import javafx.scene.layout.VBox;
import javafx.scene.robot.Robot;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import org.testfx.api.FxToolkit;

/**
 * How quick the screens are, and whether visits leave memory flat; a table with targets. Times run until the frame with
 * the change has been drawn: to the second pulse after it. Beside each stands the work in it: processor time of the two
 * threads that make and draw the screen, which says what a machine with other work to do would take by itself.
 *
 * <p>{@code mvn -Pbench test-compile}, then this class on the test class path, on a display of 1920 by 1080 with
 * {@code -Dprism.order=sw -Xmx1g}.
 */
public final class KioskBench {
    private static final int WIDTH = 1920;
    private static final int HEIGHT = 1080;
    private static final int ROUNDS = 5;
    private static final int PRESSES = 60;
    private static final Set<String> SCREENS_THREADS = Set.of("JavaFX Application Thread", "QuantumRenderer-0");
    private static final int FRAMES = 240;
    private static final double STEP = 12;
    private static final int MOST_NAMED = 8;
    private static final double MEGABYTE = 1024 * 1024;
    private static final List<Place> PLACES = List.of(
            new Place.Home(), Place.Topics.FIRST, Place.Topic.of(new TopicId("rear-remotes")), Place.Find.EMPTY,
            Place.Questions.NEXT, Place.AllAnswers.TOP, Place.Results.TOP, new Place.Results(true, 0),
            Place.UnitSheet.of(new UnitId("n-203")), Place.SideBySide.TOP, Place.SecondQuote.FIRST,
            new Place.Guide(Visit.NEW, 0), Place.Quiz.NEXT, Place.QuizSummary.TOP, Place.ListPreview.TOP,
            new Place.Print());

    private final Shown shown;
    private final Stage stage;

    private KioskBench(Shown shown, Stage stage) {
        this.shown = shown;
        this.stage = stage;
    }

    /** Measures and prints. */
    public static void main(String[] arguments) {
        try (Workshop workshop = new Workshop()) {
            Shown shown = Fx.on(() -> Shown.of(Rooms.premises(), WIDTH, HEIGHT, workshop.backRoom()));
            Stage stage = Fx.on(() -> {
                FxToolkit.registerPrimaryStage();
                Stage fresh = new Stage(StageStyle.UNDECORATED);
                fresh.setX(0);
                fresh.setY(0);
                fresh.setScene(shown.scene());
                fresh.show();
                return fresh;
            });
            KioskBench bench = new KioskBench(shown, stage);
            bench.screens(1);
            bench.report("press feedback, ms", bench.presses(), 85, Double.NaN);
            List<Took> changes = bench.screens(ROUNDS);
            bench.report("screen change, ms", changes, 250, 500);
            bench.dearest(changes);
            bench.scrolling();
            bench.heap();
        }
        Platform.exit();
        System.exit(0);
    }

    /** Milliseconds by the clock, and of work in them. */
    private record Took(double millis, double work) {}

    /** What the screen's threads have worked so far, in milliseconds. */
    private static double work() {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        return Arrays.stream(threads.getThreadInfo(threads.getAllThreadIds()))
                .filter(Objects::nonNull)
                .filter(thread -> SCREENS_THREADS.contains(thread.getThreadName()))
                .mapToLong(thread -> threads.getThreadCpuTime(thread.getThreadId()))
                .sum() / 1e6;
    }

    private static double p95(double[] sorted) {
        return sorted[(int) Math.ceil(sorted.length * 0.95) - 1];
    }

    private void report(String what, List<Took> all, double target, double most) {
        double[] values = all.stream().mapToDouble(Took::millis).sorted().toArray();
        double[] works = all.stream().mapToDouble(Took::work).sorted().toArray();
        double p95 = p95(values);
        double highest = values[values.length - 1];
        boolean kept = p95 <= target && !(highest > most);
        say("%-28s median %6.1f  p95 %6.1f (at most %.0f)  highest %6.1f%s  of %d  %s; "
                        + "work median %.1f p95 %.1f highest %.1f", what,
                values[values.length / 2], p95, target, highest,
                Double.isNaN(most) ? "" : String.format(Locale.ROOT, " (at most %.0f)", most), values.length,
                kept ? "kept" : "MISSED", works[works.length / 2], p95(works), works[works.length - 1]);
    }

    /** The screens with the most work, each with its least of all rounds. */
    private void dearest(List<Took> changes) {
        Map<String, Double> least = new HashMap<>();
        for (int i = 0; i < changes.size(); i++) {
            least.merge(PLACES.get(i % PLACES.size()).key(), changes.get(i).work(), Math::min);
        }
        say("%-28s %s", "  most work, at the least", least.entrySet().stream()
                .sorted(Map.Entry.<String, Double>comparingByValue().reversed())
                .limit(MOST_NAMED)
                .map(each -> String.format(Locale.ROOT, "%s %.0f", each.getKey(), each.getValue()))
                .collect(Collectors.joining(", ")));
    }

    private static Took untilDrawn(Runnable step) {
        CompletableFuture<Took> drawn = new CompletableFuture<>();
        Platform.runLater(() -> {
            double before = work();
            long start = System.nanoTime();
            step.run();
            new AnimationTimer() {
                private int pulses;

                @Override
                public void handle(long now) {
                    pulses++;
                    if (pulses == 2) {
                        stop();
                        drawn.complete(new Took((System.nanoTime() - start) / 1e6, work() - before));
                    }
                }
            }.start();
        });
        return drawn.join();
    }

    /** Each screen of a visit in turn, the visit's matching being known. */
    private List<Took> screens(int rounds) {
        Frame frame = shown.frame();
        Fx.on(() -> {
            frame.startOver(new Place.Home());
            frame.change(fresh -> MatchPlaces.longDrive().togglePin(new UnitId("n-203"))
                    .togglePin(new UnitId("n-206")));
            return true;
        });
        while (Fx.on(() -> frame.outlook().get().isEmpty())) {
            Thread.onSpinWait();
        }
        List<Took> all = new ArrayList<>();
        for (int round = 0; round < rounds; round++) {
            for (Place place : PLACES) {
                all.add(untilDrawn(() -> frame.go(place)));
            }
        }
        return all;
    }

    private List<Took> presses() {
        List<Took> all = new ArrayList<>();
        for (int i = 0; i < PRESSES; i++) {
            boolean even = i % 2 == 0;
            Point2D at = Fx.on(() -> {
                shown.frame().go(new Place.Home());
                shown.layOut();
                Touch door = shown.touches().stream().filter(each -> each.getStyleClass().contains("door"))
                        .skip(even ? 0 : 1).findFirst().orElseThrow();
                new Robot().mouseMove(door.localToScreen(door.getWidth() / 2, door.getHeight() / 2));
                return door.localToScreen(door.getWidth() / 2, door.getHeight() / 2);
            });
            untilDrawn(() -> {});
            all.add(pressed());
            Fx.on(() -> {
                new Robot().mouseMove(at.add(0, HEIGHT / 2.0));
                new Robot().mouseRelease(MouseButton.PRIMARY);
                shown.clock().pass(Duration.ofSeconds(1));
                return true;
            });
        }
        return all;
    }

    /** From the robot's press to the frame after the one in which something looks pressed. */
    private Took pressed() {
        CompletableFuture<Took> drawn = new CompletableFuture<>();
        Platform.runLater(() -> {
            double before = work();
            long start = System.nanoTime();
            new Robot().mousePress(MouseButton.PRIMARY);
            new AnimationTimer() {
                private int pulses;

                @Override
                public void handle(long now) {
                    boolean armed = shown.touches().stream().anyMatch(each -> each.getPseudoClassStates().stream()
                            .anyMatch(state -> state.getPseudoClassName().equals("armed")));
                    pulses = armed ? pulses + 1 : 0;
                    if (pulses == 2) {
                        stop();
                        drawn.complete(new Took((System.nanoTime() - start) / 1e6, work() - before));
                    }
                }
            }.start();
        });
        return drawn.join();
    }

    private void scrolling() {
        Fx.on(() -> {
            shown.frame().go(Place.Topic.of(new TopicId("rear-remotes")));
            shown.layOut();
            return true;
        });
        Column column = Fx.on(() -> shown.scene().getRoot().lookupAll(".column").stream()
                .map(Column.class::cast).max(Comparator.comparingInt(each -> count(each.content()))).orElseThrow());
        int nodes = Fx.on(() -> count(column.content()));
        double ours = frames(step -> column.fireEvent(new ScrollEvent(ScrollEvent.SCROLL, 0, 0, 0, 0, false, false,
                false, false, false, false, 0, step / 60 % 2 == 0 ? -STEP : STEP, 0, 0,
                ScrollEvent.HorizontalTextScrollUnits.NONE, 0, ScrollEvent.VerticalTextScrollUnits.NONE, 0, 0, null)));
        ScrollPane bare = Fx.on(() -> {
            VBox lines = new VBox();
            for (int i = 0; i < nodes / 2; i++) {
                lines.getChildren().add(new Label("A line of words that is about as long as one of ours, number " + i));
            }
            ScrollPane pane = new ScrollPane(lines);
            stage.setScene(new Scene(pane, WIDTH, HEIGHT));
            return pane;
        });
        double theirs = frames(step -> bare.setVvalue(bare.getVvalue() + (step / 60 % 2 == 0 ? 0.005 : -0.005)));
        Fx.on(() -> {
            stage.setScene(shown.scene());
            return true;
        });
        double ratio = ours / theirs;
        say("%-28s %.1f ms a frame, a bare ScrollPane of %d nodes %.1f, ratio %.2f (at most 1.25)  %s", "scrolling",
                ours, nodes, theirs, ratio, ratio <= 1.25 ? "kept" : "MISSED");
    }

    /** Milliseconds a frame, each with one step of scrolling. */
    private static double frames(IntConsumer scroll) {
        CompletableFuture<Double> done = new CompletableFuture<>();
        Platform.runLater(() -> new AnimationTimer() {
            private int frame;
            private long start;

            @Override
            public void handle(long now) {
                if (frame == FRAMES / 4) {
                    start = System.nanoTime();
                }
                scroll.accept(frame);
                frame++;
                if (frame == FRAMES) {
                    stop();
                    done.complete((System.nanoTime() - start) / 1e6 / (FRAMES * 3 / 4.0));
                }
            }
        }.start());
        return done.join();
    }

    private static int count(Node node) {
        return 1 + (node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream().mapToInt(KioskBench::count).sum() : 0);
    }

    private void heap() {
        visits(20);
        double early = used();
        visits(180);
        double late = used();
        say("%-28s %.1f MB after 20 visits, %.1f after 200, ratio %.3f (at most 1.15)  %s", "heap", early, late,
                late / early, late / early <= 1.15 ? "kept" : "MISSED");
    }

    private void visits(int count) {
        for (int i = 0; i < count; i++) {
            Fx.on(() -> {
                shown.frame().startOver(new Place.Home());
                shown.frame().change(fresh -> MatchPlaces.longDrive());
                for (Place place : PLACES) {
                    shown.frame().go(place);
                    shown.layOut();
                }
                shown.frame().startOver(new Place.Attract());
                return true;
            });
        }
    }

    private static double used() {
        for (int i = 0; i < 3; i++) {
            System.gc();
        }
        Runtime runtime = Runtime.getRuntime();
        return (runtime.totalMemory() - runtime.freeMemory()) / MEGABYTE;
    }

    private static void say(String pattern, Object... values) {
        System.out.println(String.format(Locale.ROOT, pattern, values));
    }
}
