package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Whose work gets through; workers and screen take one step at a time, when the test says so. */
class BackRoomTest {
    private final Deque<Runnable> workers = new ArrayDeque<>();
    private final Deque<Runnable> screen = new ArrayDeque<>();
    private final BackRoom room = new BackRoom(workers::add, screen::add);
    private final List<String> told = new ArrayList<>();

    private void ask(String desk, String result) {
        room.work(desk, () -> result, told::add, failure -> told.add("failed: " + failure));
    }

    private void finish() {
        while (!workers.isEmpty() || !screen.isEmpty()) {
            (workers.isEmpty() ? screen : workers).remove().run();
        }
    }

    @Test
    void aResultArrivesOnTheScreensThread() {
        ask("match", "done");
        workers.remove().run();
        assertEquals(List.of(), told);
        screen.remove().run();
        assertEquals(List.of("done"), told);
    }

    @Test
    void newerWorkAtTheSameDeskReplacesOlderAndOtherDesksGoOn() {
        ask("match", "old");
        ask("print", "other");
        ask("match", "new");
        finish();
        assertEquals(List.of("other", "new"), told);
    }

    @Test
    void aResultThatIsReadyButNotYetToldIsReplacedToo() {
        ask("match", "old");
        workers.remove().run();
        ask("match", "new");
        finish();
        assertEquals(List.of("new"), told);
    }

    @Test
    void nothingOfAVisitArrivesAfterItsEnd() {
        ask("match", "mine");
        ask("print", "mine too");
        workers.remove().run();
        room.endVisit();
        finish();
        assertEquals(List.of(), told);
    }

    @Test
    void cancelledWorkTellsNothing() {
        ask("match", "mine");
        room.cancel("match");
        room.cancel("nobody works here");
        finish();
        assertEquals(List.of(), told);
    }

    @Test
    void aFailureArrivesAsItWasThrown() {
        room.<String>work("match", () -> {
            throw new IOException("no disk");
        }, told::add, failure -> told.add(failure.toString()));
        finish();
        assertEquals(List.of("java.io.IOException: no disk"), told);
    }

    @Test
    void longWorkCanTellThatItWasDropped() {
        List<Boolean> dropped = new ArrayList<>();
        room.work("match", () -> {
            dropped.add(BackRoom.isDropped());
            room.cancel("match");
            dropped.add(BackRoom.isDropped());
            return "late";
        }, told::add, failure -> told.add("failed"));
        finish();
        assertEquals(List.of(false, true), dropped);
        assertTrue(told.isEmpty());
        assertTrue(Thread.interrupted(), "the test's own thread did the work");
    }

    @Test
    void anErrandOutlivesTheVisit() {
        room.errand(() -> told.add("ran"));
        room.endVisit();
        finish();
        assertEquals(List.of("ran"), told);
    }
}
