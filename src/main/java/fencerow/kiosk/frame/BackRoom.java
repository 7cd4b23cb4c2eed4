package fencerow.kiosk.frame;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.Executor;
import java.util.concurrent.FutureTask;
import java.util.function.Consumer;

/**
 * Where work is done that must not hold up the screen. The only place of the kiosk that knows threads; everything that
 * goes in and comes out is immutable. Confined to the screen's thread; only the work itself runs elsewhere.
 *
 * <p>Each piece of work belongs to a desk. Newer work at the same desk cancels the older, and when a visit ends the
 * results of all its work are dropped.
 */
public final class BackRoom {
    private final Executor workers;
    private final Executor screen;
    private final Map<String, FutureTask<?>> desks = new HashMap<>();

    /**
     * Opens it.
     *
     * @param workers runs the work
     * @param screen  runs what follows, on the screen's thread
     */
    BackRoom(Executor workers, Executor screen) {
        this.workers = workers;
        this.screen = screen;
    }

    /** One in which work is done at once, in place: for tests and for screens drawn without a window. */
    public static BackRoom inPlace() {
        return new BackRoom(Runnable::run, Runnable::run);
    }

    /**
     * Has work done.
     *
     * @param desk   names the work; newer work of the same name replaces it
     * @param work   takes and returns immutable values
     * @param done   gets the result on the screen's thread, unless the work was replaced or the visit ended
     * @param failed gets what went wrong, likewise
     */
    public <T> void work(String desk, Callable<T> work, Consumer<? super T> done, Consumer<Throwable> failed) {
        cancel(desk);
        FutureTask<T> task = new FutureTask<>(work) {
            @Override
            protected void done() {
                screen.execute(() -> deliver(desk, this, done, failed));
            }
        };
        desks.put(desk, task);
        workers.execute(task);
    }

    /** Has something done that nobody waits for and that the end of a visit does not stop; it must not throw. */
    void errand(Runnable errand) {
        workers.execute(errand);
    }

    /** Whether the work that asks has been dropped meanwhile; long work asks now and then, and stops. */
    public static boolean isDropped() {
        return Thread.currentThread().isInterrupted();
    }

    /** Drops the work at the desk, if there is any. */
    public void cancel(String desk) {
        FutureTask<?> task = desks.remove(desk);
        if (task != null) {
            task.cancel(true);
        }
    }

    /** Drops all work, its results included. */
    void endVisit() {
        List<FutureTask<?>> dropped = List.copyOf(desks.values());
        desks.clear();
        dropped.forEach(task -> task.cancel(true));
    }

    private <T> void deliver(
            String desk, FutureTask<T> task, Consumer<? super T> done, Consumer<Throwable> failed) {
        if (!desks.remove(desk, task)) {
            return;
        }
        try {
            done.accept(task.get());
        } catch (ExecutionException e) {
            failed.accept(e.getCause() == null ? e : e.getCause());
        } catch (CancellationException | InterruptedException e) {
            failed.accept(e);
        }
    }
}
