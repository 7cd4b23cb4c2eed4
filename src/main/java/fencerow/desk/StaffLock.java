package fencerow.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;

/**
 * The lock of the staff door. Counts wrong PINs and makes whoever types them wait: after three, half a minute; then twice as long for each further
 * one, up to a quarter of an hour. May be used from any thread.
 */
public final class StaffLock {
    private static final int FREE = 3;
    private static final Duration FIRST = Duration.ofSeconds(30);
    private static final Duration LONGEST = Duration.ofMinutes(15);

    private final Clock clock;
    private int wrong;
    private Instant since;
    private boolean open;

    /** Locked; open to the first three. */
    public StaffLock(Clock clock) {
        this.clock = clock;
        this.since = clock.instant();
    }

    /** How long nobody may try; zero where one may. A clock that was set back starts the wait anew. */
    public synchronized Duration left() {
        if (wrong < FREE) {
            return Duration.ZERO;
        }
        Duration wait = FIRST.multipliedBy(1L << Math.min(wrong - FREE, 10));
        wait = wait.compareTo(LONGEST) > 0 ? LONGEST : wait;
        Duration passed = Duration.between(since, clock.instant());
        if (passed.isNegative()) {
            since = clock.instant();
            return wait;
        }
        Duration left = wait.minus(passed);
        return left.isNegative() ? Duration.ZERO : left;
    }

    /**
     * Tries a PIN, unless nobody may now.
     *
     * @return whether the door opens
     */
    public synchronized boolean tryOpen(Pin pin, String digits) {
        if (!left().isZero()) {
            return false;
        }
        if (pin.matches(digits)) {
            wrong = 0;
            open = true;
            return true;
        }
        wrong++;
        since = clock.instant();
        return false;
    }

    /** Whether the right PIN was given since it was last locked. */
    public synchronized boolean isOpen() {
        return open;
    }

    /** Locks it. */
    public synchronized void close() {
        open = false;
    }
}
