package fencerow.kiosk;

import fencerow.kiosk.kit.Theme;
import java.util.concurrent.Callable;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.FutureTask;
import java.util.concurrent.TimeUnit;
import javafx.application.Platform;
import org.testfx.api.FxToolkit;

/** Runs something on JavaFX's thread and waits for it. */
public final class Fx {
    private static final int LONGEST_SECONDS = 300;

    private Fx() {}

    /** The typeface, loaded by whoever asks first and then there. */
    private static final class Faces {
        static {
            Theme.loadFonts();
        }

        static void load() {}
    }

    /** What {@code work} returns; its failure is thrown on as it is. On JavaFX's thread it is done at once. */
    public static <T> T on(Callable<T> work) {
        try {
            if (Platform.isFxApplicationThread()) {
                return work.call();
            }
            FxToolkit.registerPrimaryStage();
            FutureTask<T> task = new FutureTask<>(() -> {
                Faces.load();
                return work.call();
            });
            Platform.runLater(task);
            return task.get(LONGEST_SECONDS, TimeUnit.SECONDS);
        } catch (ExecutionException e) {
            if (e.getCause() instanceof Error error) {
                throw error;
            }
            throw new AssertionError("failed on JavaFX's thread", e.getCause());
        } catch (Exception e) {
            throw new AssertionError("JavaFX did not answer", e);
        }
    }
}
