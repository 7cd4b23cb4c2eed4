package fencerow;

import fencerow.backoffice.Folders;
import fencerow.kiosk.Kiosk;
import fencerow.kiosk.frame.Speaker;
import fencerow.kiosk.kit.Touch;
import java.io.BufferedReader;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Locale;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.TimeUnit;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.application.Platform;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Scene;
import javafx.scene.layout.Background;
import javafx.scene.layout.Pane;
import javafx.scene.paint.Color;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.Window;

/**
 * A main: the kiosk full screen over the shipped content, or a stray window of one colour that wants the screen too.
 * Each line on standard input it answers with one of its own: the window, then what can be touched and where.
 */
final class WatchedKiosk {
    /** What the stray window is filled with, in 24 bits of red, green and blue; nothing of the kiosk looks like it. */
    static final int STRAY = 0xff00ff;

    /** What each answer begins with. */
    static final String ANSWER = "shown";

    private static final int PATIENCE_SECONDS = 60;

    private WatchedKiosk() {}

    /** {@code stray}, or {@code kiosk} and its data folder. */
    public static void main(String[] args) {
        Thread answers = new Thread(WatchedKiosk::answer, "answers");
        answers.setDaemon(true);
        answers.start();
        if (args[0].equals("stray")) {
            Platform.startup(WatchedKiosk::stray);
        } else {
            Clock clock = Clock.systemUTC();
            var wiring = new KioskWiring(clock, "", config -> Path.of(args[1]));
            Kiosk.run(new KioskFiles(wiring, Folders.below(Path.of(""))), Speaker.NONE, clock, "");
            Runtime.getRuntime().halt(0);
        }
    }

    private static void stray() {
        Pane pane = new Pane();
        pane.setBackground(Background.fill(Color.web(String.format(Locale.ROOT, "#%06x", STRAY))));
        Stage stage = new Stage();
        stage.setScene(new Scene(pane, 800, 600));
        stage.setMaximized(true);
        stage.show();
    }

    private static void answer() {
        try {
            new BufferedReader(new InputStreamReader(System.in, StandardCharsets.UTF_8)).lines()
                    .forEach(asked -> System.out.println(ANSWER + "\t" + askedState()));
        } finally {
            // Whoever asked is gone, or the screen's thread hangs.
            Runtime.getRuntime().halt(1);
        }
    }

    private static String askedState() {
        CompletableFuture<String> state = new CompletableFuture<>();
        try {
            Platform.runLater(() -> state.complete(state()));
        } catch (IllegalStateException e) {
            return "JavaFX has not started";
        }
        return state.orTimeout(PATIENCE_SECONDS, TimeUnit.SECONDS).join();
    }

    private static String state() {
        return Window.getWindows().stream().filter(Window::isShowing).map(Stage.class::cast)
                .flatMap(stage -> Stream.concat(
                        Stream.of(window(stage)),
                        stage.getScene().getRoot().lookupAll(".touch").stream()
                                .filter(Touch.class::isInstance).map(Touch.class::cast).map(WatchedKiosk::place)))
                .collect(Collectors.joining("\t"));
    }

    private static String window(Stage stage) {
        Rectangle2D screen = Screen.getPrimary().getBounds();
        Scene scene = stage.getScene();
        return (stage.isFullScreen() ? "full " : "part ") + (stage.isFocused() ? "first " : "behind ")
                + (int) stage.getX() + "," + (int) stage.getY() + " "
                + (int) scene.getWidth() + "x" + (int) scene.getHeight() + " of "
                + (int) screen.getWidth() + "x" + (int) screen.getHeight();
    }

    private static String place(Touch touch) {
        Bounds box = touch.localToScreen(touch.getLayoutBounds());
        return touch.getAccessibleText() + "@" + (int) box.getCenterX() + "," + (int) box.getCenterY();
    }
}
