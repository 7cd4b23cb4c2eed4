package fencerow.kiosk.frame;

import java.time.Duration;
import java.util.Arrays;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executor;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.stream.Collectors;

/**
 * Watches from outside whether the screen's thread still answers. Counts looks rather than reading a clock, so that
 * neither a clock that is put right nor a machine that slept looks like a hang.
 */
final class Watchdog {
    private static final System.Logger LOG = System.getLogger(Watchdog.class.getName());

    private final Executor screen;
    private final Duration betweenLooks;
    private final int patience;

    /**
     * A watchdog.
     *
     * @param screen   runs something on the screen's thread
     * @param patience how many looks in a row may find no answer
     */
    Watchdog(Executor screen, Duration betweenLooks, int patience) {
        this.screen = screen;
        this.betweenLooks = betweenLooks;
        this.patience = patience;
    }

    /** Watches until all is done; false if the screen hung before, and all threads' stacks are written down. */
    boolean watch(CountDownLatch done) throws InterruptedException {
        AtomicBoolean answered = new AtomicBoolean(true);
        int silent = 0;
        while (!done.await(betweenLooks.toMillis(), TimeUnit.MILLISECONDS)) {
            if (answered.getAndSet(false)) {
                silent = 0;
                screen.execute(() -> answered.set(true));
            } else {
                silent++;
                if (silent >= patience) {
                    LOG.log(System.Logger.Level.ERROR, "The screen has not answered for " + silent + " looks, "
                            + betweenLooks.toMillis() + " ms apart; the process ends\n" + stacks());
                    return false;
                }
            }
        }
        return true;
    }

    private static String stacks() {
        return Thread.getAllStackTraces().entrySet().stream()
                .map(each -> each.getKey().getName() + " " + each.getKey().getState() + Arrays.stream(each.getValue())
                        .map(line -> "\n    at " + line)
                        .collect(Collectors.joining()))
                .sorted()
                .collect(Collectors.joining("\n"));
    }
}
