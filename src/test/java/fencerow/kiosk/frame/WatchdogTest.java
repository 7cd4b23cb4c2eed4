package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.kiosk.HandClock;
import java.time.Duration;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.atomic.AtomicInteger;
import org.junit.jupiter.api.Test;

/** When the process gives up and asks to be started again. */
class WatchdogTest {
    private static final Duration SHORT = Duration.ofMillis(1);

    @Test
    void aScreenThatNeverAnswersIsFoundHanging() throws InterruptedException {
        AtomicInteger asked = new AtomicInteger();

        boolean well = new Watchdog(question -> asked.incrementAndGet(), SHORT, 10).watch(new CountDownLatch(1));

        assertFalse(well);
        assertEquals(1, asked.get(), "one question waits for its answer, not ten");
    }

    @Test
    void aScreenThatAnswersIsWatchedUntilTheKioskIsDone() throws InterruptedException {
        CountDownLatch done = new CountDownLatch(1);
        AtomicInteger asked = new AtomicInteger();

        boolean well = new Watchdog(question -> {
            question.run();
            if (asked.incrementAndGet() == 30) {
                done.countDown();
            }
        }, SHORT, 3).watch(done);

        assertTrue(well);
    }

    @Test
    void fiveFailuresWithinTenMinutesAreTooManyAndFiveInAnHourAreNot() {
        HandClock clock = new HandClock();
        FailureLimit limit = new FailureLimit(clock, 5, Duration.ofMinutes(10));
        for (int i = 0; i < 5; i++) {
            assertFalse(limit.isReachedByOneMore(), "failure " + i + " of five in an hour");
            clock.pass(Duration.ofMinutes(12));
        }
        for (int i = 1; i < 5; i++) {
            assertFalse(limit.isReachedByOneMore(), "failure " + i + " of five at once");
            clock.pass(Duration.ofMinutes(2));
        }
        assertTrue(limit.isReachedByOneMore());
    }
}
