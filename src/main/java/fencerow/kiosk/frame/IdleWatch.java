package fencerow.kiosk.frame;

import fencerow.desk.Settings;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * Watches whether anyone is still here. Asks after a wait that grows with the words on the screen, then counts down;
 * one touch starts the wait anew, as often as the shopper likes. Knows no screen: it is told of touches and asked.
 */
final class IdleWatch {
    private static final Duration LONGEST_WAIT = Duration.ofMinutes(5);
    private static final double WORDS_PER_SECOND = 2.5;
    private static final int SECONDS_BEFORE_READING = 60;

    private final Clock clock;
    private final Settings.Idle idle;
    private Instant lastTouch;
    private Duration wait;

    IdleWatch(Clock clock, Settings.Idle idle) {
        this.clock = clock;
        this.idle = idle;
        this.lastTouch = clock.instant();
        this.wait = idle.warnAfter();
    }

    /** What to do now. */
    sealed interface State {
        /** Somebody is here. */
        record Here() implements State {}

        /** Ask; {@code seconds} are left, at least 1. */
        record Asking(int seconds) implements State {}

        /** Nobody is here any more. */
        record Gone() implements State {}
    }

    /** The screen was touched. */
    void touched() {
        lastTouch = clock.instant();
    }

    /** Another screen was opened by a touch, behind the staff door or not, with so many words to read. */
    void shown(boolean toStaff, int words) {
        touched();
        wait = toStaff ? idle.signOut().minus(idle.resetAfter()) : waitFor(idle, words);
    }

    /** The wait before asking: the setting, or longer where there is much to read, then at most five minutes. */
    static Duration waitFor(Settings.Idle idle, int words) {
        if (words == 0) {
            return idle.warnAfter();
        }
        Duration reading = Duration.ofSeconds(SECONDS_BEFORE_READING + Math.round(words / WORDS_PER_SECOND));
        Duration bounded = reading.compareTo(LONGEST_WAIT) > 0 ? LONGEST_WAIT : reading;
        return idle.warnAfter().compareTo(bounded) > 0 ? idle.warnAfter() : bounded;
    }

    /** How long nothing was touched. */
    Duration quiet() {
        return Duration.between(lastTouch, clock.instant());
    }

    /** How things stand now. */
    State state() {
        Duration asked = quiet().minus(wait);
        if (asked.isNegative()) {
            return new State.Here();
        }
        Duration left = idle.resetAfter().minus(asked);
        if (left.isNegative() || left.isZero()) {
            return new State.Gone();
        }
        return new State.Asking((int) Math.ceil(left.toMillis() / 1000.0));
    }
}
