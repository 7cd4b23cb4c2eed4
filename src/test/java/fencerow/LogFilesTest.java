package fencerow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneOffset;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import org.junit.jupiter.api.Test;

/** What the log says, and what it must not. */
class LogFilesTest {
    @Test
    void aFailureIsWrittenDownWithoutItsMessages() {
        LogRecord line = new LogRecord(Level.SEVERE, "the list cannot be set");
        line.setInstant(Instant.parse("2026-05-04T15:30:00.250Z"));
        line.setLoggerName("fencerow.Here");
        line.setThrown(new IllegalStateException("canary one", new IllegalArgumentException("canary two")));

        String text = new LogFiles.Lines(ZoneOffset.UTC).format(line);

        assertTrue(text.startsWith("2026-05-04 15:30:00 SEVERE fencerow.Here: the list cannot be set\n"), text);
        assertTrue(text.contains("IllegalStateException") && text.contains("IllegalArgumentException"), text);
        assertTrue(text.contains("aFailureIsWrittenDownWithoutItsMessages"), text);
        assertFalse(text.contains("canary"), text);
    }

    @Test
    void aClockPutRightDoesNotTouchTheSteadyOne() {
        long[] nanos = {7_000_000_000L};
        SteadyClock clock = new SteadyClock(() -> nanos[0]);
        nanos[0] += 1_500_000_000L;

        assertEquals(Instant.EPOCH.plusMillis(1500), clock.instant());
    }
}
