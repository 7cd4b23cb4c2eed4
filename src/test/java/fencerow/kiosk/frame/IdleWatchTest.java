package fencerow.kiosk.frame;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.desk.Settings;
import fencerow.kiosk.HandClock;
import java.time.Duration;
import org.junit.jupiter.api.Test;

/** When the kiosk asks whether anyone is here, and when it takes nobody for an answer. */
class IdleWatchTest {
    private static final Settings.Idle IDLE = new Settings.Idle(Duration.ofSeconds(75), Duration.ofSeconds(30));

    private final HandClock clock = new HandClock();
    private final IdleWatch watch = new IdleWatch(clock, IDLE);

    @Test
    void asksAfterTheWaitCountsDownAndThenGivesUp() {
        clock.pass(Duration.ofMillis(74_999));
        assertEquals(new IdleWatch.State.Here(), watch.state());
        clock.pass(Duration.ofMillis(1));
        assertEquals(new IdleWatch.State.Asking(30), watch.state());
        clock.pass(Duration.ofMillis(29_999));
        assertEquals(new IdleWatch.State.Asking(1), watch.state());
        clock.pass(Duration.ofMillis(1));
        assertEquals(new IdleWatch.State.Gone(), watch.state());
    }

    @Test
    void oneTouchIsEnoughAsOftenAsTheShopperLikes() {
        // WCAG 2.2, 2.2.1: at least 20 seconds to answer by a simple act, at least ten times.
        for (int i = 0; i < 12; i++) {
            clock.pass(IDLE.warnAfter());
            assertTrue(assertInstanceOf(IdleWatch.State.Asking.class, watch.state()).seconds() >= 20);
            watch.touched();
            assertEquals(new IdleWatch.State.Here(), watch.state());
        }
    }

    @Test
    void theWaitFollowsTheWordsBetweenTheSettingAndFiveMinutes() {
        assertEquals(Duration.ofSeconds(75), IdleWatch.waitFor(IDLE, 0));
        assertEquals(Duration.ofSeconds(75), IdleWatch.waitFor(IDLE, 10));
        assertEquals(Duration.ofSeconds(60 + 100), IdleWatch.waitFor(IDLE, 250));
        for (int words = 0; words < 2000; words++) {
            Duration wait = IdleWatch.waitFor(IDLE, words);
            assertTrue(wait.compareTo(IDLE.warnAfter()) >= 0, words + " words");
            assertTrue(wait.compareTo(IdleWatch.waitFor(IDLE, words + 1)) <= 0, words + " words");
            assertTrue(wait.compareTo(Duration.ofMinutes(5)) <= 0, words + " words");
        }
        var patient = new Settings.Idle(Duration.ofMinutes(8), Duration.ofSeconds(30));
        assertEquals(Duration.ofMinutes(8), IdleWatch.waitFor(patient, 2000), "the showroom's own wait is the least");
    }

    @Test
    void anotherScreenBringsItsOwnWait() {
        watch.shown(false, 500);
        clock.pass(Duration.ofSeconds(259));
        assertEquals(new IdleWatch.State.Here(), watch.state());
        clock.pass(Duration.ofSeconds(1));
        assertInstanceOf(IdleWatch.State.Asking.class, watch.state());
    }
}
