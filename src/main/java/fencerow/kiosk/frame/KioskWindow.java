package fencerow.kiosk.frame;

import fencerow.desk.StaffLock;
import fencerow.kiosk.kit.Theme;
import java.time.Clock;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import javafx.animation.Animation;
import javafx.animation.KeyFrame;
import javafx.animation.Timeline;
import javafx.application.Platform;
import javafx.scene.Cursor;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.input.KeyCombination;
import javafx.scene.layout.StackPane;
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
    private static final int TICKS_A_LOOK_FOR_NEWER = 4;
    private static final int TICKS_A_LOOK_AT_MEMORY = 120;
    private static final int WORKERS = 3;
    private static final int MOST_FAILURES = 5;
    private static final java.time.Duration FAILURES_WITHIN = java.time.Duration.ofMinutes(10);
    private static final java.time.Duration WATCHDOG_LOOK = java.time.Duration.ofSeconds(1);
    private static final int WATCHDOG_PATIENCE = 10;

    private final Content content;
    private final Clock clock;
    private final Consumer<Ending> ended;
    private final ExecutorService workers = Executors.newFixedThreadPool(WORKERS, KioskWindow::worker);
    private final BackRoom backRoom = new BackRoom(workers, Platform::runLater);
    private final Scene scene = new Scene(new StackPane(), Theme.ground());
    private final Stage stage = new Stage();
    private final Cover cover = new Cover(stage);
    private final Timeline ticks = new Timeline(new KeyFrame(LOOK_AT_CLOCK, passed -> tick()));
    private final FailureLimit failures;
    private final StaffLock lock;
    private final FirstPage firstPage;
    private Optional<Frame> frame = Optional.empty();
    private Optional<Thread.UncaughtExceptionHandler> before = Optional.empty();
    private int tick;
    private boolean looking;

    /**
     * What the window shows.
     *
     * @param openings reads what there is to show
     * @param screens  makes the screens
     * @param wrong    says what is wrong when there is nothing to show
     * @param greeter  makes the page that is there first
     * @param speaker  reads aloud
     */
    public record Content(
            Openings openings,
            ScreenMaker screens,
            BiFunction<Opening.Closed, Doors, Parent> wrong,
            Greeter greeter,
            Speaker speaker) {}

    /**
     * Makes the window; nothing is shown yet.
     *
     * @param clock a steady one: it only tells how long ago things were
     * @param ended called once when the kiosk ends
     */
    KioskWindow(Content content, Clock clock, Consumer<Ending> ended) {
        this.content = content;
        this.clock = clock;
        this.ended = ended;
        this.lock = new StaffLock(clock);
        this.firstPage = new FirstPage(content.openings(), content.greeter());
        this.failures = new FailureLimit(clock, MOST_FAILURES, FAILURES_WITHIN);
        ticks.setCycleCount(Animation.INDEFINITE);
    }

    private static Thread worker(Runnable work) {
        Thread thread = new Thread(work, "back room");
        thread.setDaemon(true);
        thread.setUncaughtExceptionHandler((worker, failure) -> Failures.log(failure));
        return thread;
    }

    /**
     * Runs the kiosk until it ends. Starts JavaFX, and so can be called once in a process.
     *
     * @param clock a steady one: it only tells how long ago things were
     * @param size {@code WxH} for an ordinary window, blank for full screen
     * @throws IllegalArgumentException if the size is neither
     */
    public static Ending run(Content content, Clock clock, String size) {
        Matcher window = SIZE.matcher(size.strip());
        if (!size.isBlank() && !window.matches()) {
            throw new IllegalArgumentException("window size [" + size + "] is not a size; give WxH, such as 1280x720");
        }
        CountDownLatch done = new CountDownLatch(1);
        CompletableFuture<Ending> how = new CompletableFuture<>();
        Platform.startup(() -> {
            KioskWindow kiosk = new KioskWindow(content, clock, ending -> {
                how.complete(ending);
                done.countDown();
            });
            if (size.isBlank()) {
                kiosk.openFullScreen();
            } else {
                kiosk.open(Integer.parseInt(window.group(1)), Integer.parseInt(window.group(2)));
            }
        });
        try {
            if (!new Watchdog(Platform::runLater, WATCHDOG_LOOK, WATCHDOG_PATIENCE).watch(done)) {
                return Ending.HANGING;
            }
        } catch (InterruptedException e) {
            Thread.currentThread().interrupt();
        }
        Platform.exit();
        return how.getNow(Ending.CLOSED);
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
        stage.initStyle(StageStyle.UNDECORATED);
        stage.setScene(scene);
        scene.setCursor(Cursor.NONE);
        stage.setFullScreenExitHint("");
        stage.setFullScreenExitKeyCombination(KeyCombination.NO_MATCH);
        stage.setOnCloseRequest(request -> request.consume());
        cover.draw();
        start();
    }

    private void start() {
        before = Optional.ofNullable(Thread.currentThread().getUncaughtExceptionHandler());
        Thread.currentThread().setUncaughtExceptionHandler((thread, failure) -> failed(failure));
        Platform.setImplicitExit(false);
        ticks.play();
        firstPage.show(scene, this::read);
    }

    private void tick() {
        frame.ifPresent(Frame::tick);
        cover.keep();
        tick++;
        if (tick % TICKS_A_LOOK_FOR_NEWER == 0 && !looking) {
            lookForNewer();
        }
        if (tick % TICKS_A_LOOK_AT_MEMORY == 0 && frame.filter(Frame::isUnattended).isPresent() && Room.isShort()) {
            LOG.log(System.Logger.Level.ERROR, "Memory runs short; the process ends to be started again");
            end(Ending.AGAIN);
        }
    }

    private void lookForNewer() {
        looking = true;
        backRoom.work("newer", content.openings()::findNewer, newer -> {
            looking = false;
            newer.ifPresent(this::offer);
        }, failure -> {
            looking = false;
            Failures.log(failure);
        });
    }

    private void offer(Opening newer) {
        if (frame.isPresent() && newer instanceof Opening.Open open) {
            frame.get().offer(open.premises());
        } else {
            show(newer);
        }
    }

    private void read() {
        backRoom.work("content", content.openings()::open, this::show, failure -> {
            Failures.log(failure);
            show(new Opening.Closed(List.of(String.valueOf(failure.getMessage()))));
        });
    }

    private void show(Opening opening) {
        frame.ifPresent(Frame::leave);
        Doors doors = new Doors(this::read, this::close, this::countFailure, lock);
        if (opening instanceof Opening.Open open) {
            Frame next = new Frame(
                    open.premises(), content.screens(), new BackRoom(workers, Platform::runLater), clock, doors,
                    content.speaker());
            frame = Optional.of(next);
            next.show(scene);
            firstPage.over(next, workers);
        } else if (opening instanceof Opening.Closed nothing) {
            frame = Optional.empty();
            scene.setRoot(content.wrong().apply(nothing, doors));
        }
    }

    private void failed(Throwable failure) {
        if (frame.isEmpty()) {
            Failures.log(failure);
            countFailure();
            return;
        }
        try {
            frame.get().failed(failure);
        } catch (RuntimeException | Error e) {
            Failures.log(e);
            end(Ending.AGAIN);
        }
    }

    private void countFailure() {
        if (failures.isReachedByOneMore()) {
            LOG.log(System.Logger.Level.ERROR, MOST_FAILURES + " failures within " + FAILURES_WITHIN.toMinutes()
                    + " minutes; the process ends to be started again");
            end(Ending.AGAIN);
        }
    }

    void close() {
        end(Ending.CLOSED);
    }

    private void end(Ending how) {
        ticks.stop();
        workers.shutdownNow();
        stage.hide();
        cover.open();
        before.ifPresent(Thread.currentThread()::setUncaughtExceptionHandler);
        ended.accept(how);
    }

    Stage stage() {
        return stage;
    }

    Optional<Frame> frame() {
        return frame;
    }
}
