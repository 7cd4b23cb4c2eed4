package fencerow;

import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.function.LongSupplier;

/**
 * A clock that nobody puts right: it starts at the epoch and tells only how much time has passed since. A visit is
 * timed by it, so that setting the machine's clock neither ends a visit nor keeps one open.
 */
final class SteadyClock extends Clock {
    private final LongSupplier nanos;
    private final long start;

    /** Starts now; {@code nanos} never goes backwards, as {@link System#nanoTime} does not. */
    SteadyClock(LongSupplier nanos) {
        this.nanos = nanos;
        this.start = nanos.getAsLong();
    }

    @Override
    public Instant instant() {
        return Instant.EPOCH.plusNanos(nanos.getAsLong() - start);
    }

    @Override
    public ZoneId getZone() {
        return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
        return this;
    }
}
