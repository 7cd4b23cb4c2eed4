package fencerow.kiosk.frame;

import fencerow.kiosk.Fx;
import java.time.Clock;
import java.util.Optional;
import java.util.concurrent.atomic.AtomicReference;
import javafx.stage.Stage;

/** The kiosk's real window, full screen, opened where JavaFX runs already. Closed after the test. */
public final class OpenWindow implements AutoCloseable {
    private final KioskWindow window;
    private final AtomicReference<Optional<Ending>> ending;

    private OpenWindow(KioskWindow window, AtomicReference<Optional<Ending>> ending) {
        this.window = window;
        this.ending = ending;
    }

    /** Opens it. */
    public static OpenWindow of(KioskWindow.Content content, Clock clock) {
        AtomicReference<Optional<Ending>> ending = new AtomicReference<>(Optional.empty());
        return Fx.on(() -> {
            var window = new KioskWindow(content, clock, how -> ending.set(Optional.of(how)));
            window.openFullScreen();
            return new OpenWindow(window, ending);
        });
    }

    /** Its stage. */
    public Stage stage() {
        return window.stage();
    }

    /** What is shown; empty as long as there is nothing. On JavaFX's thread. */
    public Optional<Frame> frame() {
        return window.frame();
    }

    /** How it ended, if it has. */
    public Optional<Ending> ending() {
        return ending.get();
    }

    @Override
    public void close() {
        Fx.on(() -> {
            window.close();
            return true;
        });
    }
}
