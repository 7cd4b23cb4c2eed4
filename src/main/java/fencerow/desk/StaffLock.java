package fencerow.desk;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.function.Supplier;

/**
 * A lock, of the staff door or of kept visits. Counts wrong PINs or codes and makes whoever types them wait: after
 * three, half a minute; then twice as long for each further one, up to a quarter of an hour. May be used from any
 * thread.
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
    public boolean tryOpen(Pin pin, String digits) {
        return findIfOpen(() -> pin.matches(digits) ? Optional.of(true) : Optional.empty()).isPresent();
    }

    /**
     * Tries what somebody typed, unless nobody may now.
     *
     * @param behind what is behind the door; empty if what was typed does not open it. Not asked during a wait
     * @return what is behind the door, if it opened
     */
    public synchronized <T> Optional<T> findIfOpen(Supplier<Optional<T>> behind) {
        if (!left().isZero()) {
            return Optional.empty();
        }
        Optional<T> found = behind.get();
        wrong = found.isPresent() ? 0 : wrong + 1;
        open |= found.isPresent();
        since = clock.instant();
        return found;
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
