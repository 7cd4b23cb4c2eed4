package fencerow.kiosk.frame;

import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.ArrayDeque;
import java.util.Deque;

/** Tells when failures come so thick that ending visits doesn't mend anything. Confined to the screen's thread. */
final class FailureLimit {
    private final Clock clock;
    private final int most;
    private final Duration within;
    private final Deque<Instant> failures = new ArrayDeque<>();

    /**
     * None yet.
     *
     * @param most   how many failures are too many, at least 1
     * @param within so long a time
     */
    FailureLimit(Clock clock, int most, Duration within) {
        this.clock = clock;
        this.most = most;
        this.within = within;
    }

    /** Counts one more; whether that is too many. */
    boolean isReachedByOneMore() {
        Instant now = clock.instant();
        failures.removeIf(each -> Duration.between(each, now).compareTo(within) > 0);
        failures.add(now);
        return failures.size() >= most;
    }
}
