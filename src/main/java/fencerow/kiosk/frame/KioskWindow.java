package fencerow.kiosk.frame;

import fencerow.desk.StaffLock;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BiFunction;
import java.util.function.Supplier;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.geometry.Rectangle2D;
import javafx.scene.Cursor;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.StackPane;
import javafx.stage.Screen;
import javafx.stage.Stage;
import javafx.stage.StageStyle;
import javafx.util.Duration;

/**
 * The one window: full screen without a way out, or for developers an ordinary window. Has the content read in the
 * background, then shows a frame, or what is wrong. Confined to the screen's thread.
 */
public final class KioskWindow {
    private static final System.Logger LOG = System.getLogger(KioskWindow.class.getName());
    private static final Pattern SIZE = Pattern.compile("(\\d{3,5})x(\\d{3,5})");
    private static final Duration LOOK_AT_CLOCK = Duration.millis(500);
    private static final int WORKERS = 2;

    private final Content content;
    private final Clock clock;
    private final Runnable closed;
    private final ExecutorService workers = Executors.newFixedThreadPool(WORKERS, KioskWindow::worker);
    private final BackRoom backRoom = new BackRoom(workers, Platform::runLater);
    private final Scene scene = new Scene(new StackPane());
    private final Stage stage = new Stage();
    private final Timeline ticks = new Timeline(new KeyFrame(LOOK_AT_CLOCK, tick -> tick()));
    private final StaffLock lock;
    private Optional<Frame> frame = Optional.empty();

    /**
     * What the window shows.
     *
     * @param opening reads what there is to show; called in the background, and again when staff restarts
     * @param screens makes the screens
     * @param wrong   says what is wrong when there is nothing to show
     */
    public record Content(
            Supplier<Opening> opening,
            ScreenMaker screens,
            BiFunction<Opening.Closed, Doors, Parent> wrong) {}

    /**
     * Makes the window; nothing is shown yet.
     *
     * @param closed called when staff closes the kiosk
     */
    KioskWindow(Content content, Clock clock, Runnable closed) {
        this.content = content;
        this.clock = clock;
        this.closed = closed;
        this.lock = new StaffLock(clock);
        ticks.setCycleCount(Animation.INDEFINITE);
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "back room");
        thread.setDaemon(true);
        return thread;
    }

    /**
     * Runs the kiosk until staff closes it. Starts JavaFX, and so can be called once in a process.
     *
     * @param size {@code WxH} for an ordinary window, blank for full screen
     * @throws IllegalArgumentException if the size is neither
     */
    public static void run(Content content, Clock clock, String size) {
        Matcher window = SIZE.matcher(size.strip());
        if (!size.isBlank() && !window.matches()) {
            throw new IllegalArgumentException("window size [" + size + "] is not a size; give WxH, such as 1280x720");
        }
        CountDownLatch done = new CountDownLatch(1);
        Platform.startup(() -> {
            KioskWindow kiosk = new KioskWindow(content, clock, done::countDown);
            if (size.isBlank()) {
                kiosk.openFullScreen();
            } else {
                kiosk.open(Integer.parseInt(window.group(1)), Integer.parseInt(window.group(2)));
            }
        });
        try {
            done.await();
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Platform.exit();
    }

    /** In an ordinary window, with the cursor shown; closing it ends the kiosk. */
    void open(int width, int height) {
        stage.setScene(scene);
        stage.setWidth(width);
        stage.setHeight(height);
        stage.setOnCloseRequest(request -> close());
        stage.show();
        // The scene is to have the size; what the window's own edges take comes on top.
        stage.setWidth(2 * width - scene.getWidth());
        stage.setHeight(2 * height - scene.getHeight());
        start();
    }

    /** Over the whole primary screen, without a cursor and without a way out but the staff door. */
    void openFullScreen() {
        Rectangle2D bounds = Screen.getPrimary().getBounds();
        stage.initStyle(StageStyle.UNDECORATED);
        stage.setScene(scene);
        scene.setCursor(Cursor.NONE);
        stage.setX(bounds.getMinX());
        stage.setY(bounds.getMinY());
        stage.setWidth(bounds.getWidth());
        stage.setHeight(bounds.getHeight());
        stage.setFullScreenExitHint("");
        stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
        stage.setOnCloseRequest(request -> request.consume());
        stage.show();
        stage.setFullScreen(true);
        cover(bounds);
        start();
    }

    /** A window may say that it is full screen and yet not cover it: only the scene's size tells. */
    private void cover(Rectangle2D bounds) {
        if (scene.getWidth() < bounds.getWidth() || scene.getHeight() < bounds.getHeight()) {
            LOG.log(System.Logger.Level.WARNING, "the window does not cover the screen: "
                    + scene.getWidth() + "x" + scene.getHeight() + " of "
                    + bounds.getWidth() + "x" + bounds.getHeight() + "; check the window manager");
        }
    }

    private void start() {
        Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> failed(failure));
        Platform.setImplicitExit(false);
        ticks.play();
        read();
    }

    private void tick() {
        frame.ifPresent(Frame::tick);
    }

    private void read() {
        backRoom.work("content", content.opening()::get, this::show, failure -> {
            LOG.log(System.Logger.Level.ERROR, Failures.withoutWords(failure));
            show(new Opening.Closed(List.of(String.valueOf(failure.getMessage()))));
        });
    }

    private void show(Opening opening) {
        frame.ifPresent(Frame::leave);
        Doors doors = new Doors(this::read, this::close, lock);
        if (opening instanceof Opening.Open open) {
            Frame next = new Frame(
                    open.premises(), content.screens(), new BackRoom(workers, Platform::runLater), clock, doors);
            frame = Optional.of(next);
            next.show(scene);
        } else if (opening instanceof Opening.Closed nothing) {
            frame = Optional.empty();
            scene.setRoot(content.wrong().apply(nothing, doors));
        }
    }

    private void failed(Throwable failure) {
        if (frame.isPresent()) {
            frame.get().failed(failure);
        } else {
            LOG.log(System.Logger.Level.ERROR, Failures.withoutWords(failure));
        }
    }

    private void close() {
        ticks.stop();
        workers.shutdownNow();
        stage.hide();
        closed.run();
    }

    Stage stage() {
        return stage;
    }
}
