package fencerow.kiosk.frame;

import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import javafx.application.Platform;

/** A back room as in the real kiosk: work off the screen's thread, closed after the test. */
public final class Workshop implements AutoCloseable {
    private final ExecutorService workers = Executors.newFixedThreadPool(2);

    /** Its back room. */
    public BackRoom backRoom() {
        return new BackRoom(workers, Platform::runLater);
    }

    @Override
    public void close() {
        workers.shutdownNow();
    }
}
