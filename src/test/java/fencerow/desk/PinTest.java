package fencerow.desk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.security.SecureRandom;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.HexFormat;
import org.junit.jupiter.api.Test;

/** The PIN's hash and the wait after wrong ones. */
class PinTest {
    /** RFC 7914, section 11, first and second vector. */
    @Test
    void theKeyIsThePublishedOne() {
        byte[] salt = "salt".getBytes(StandardCharsets.US_ASCII);
        assertEquals("55ac046e56e3089fec1691c22544b605f94185216dde0465e68b9d57c20dacbc"
                        + "49ca9cccf179b645991664b39d77ef317c71b845b1e30bd509112041d3a19783",
                HexFormat.of().formatHex(Pin.derive("passwd", salt, 1, 64)));
        byte[] salt2 = "NaCl".getBytes(StandardCharsets.US_ASCII);
        assertEquals("4ddcd8f60b98be21830cee5ef22701f9641a4418d04c0414aeff08876b34ab56"
                        + "a1d425a1225833549adb841b51c9b3176a272bdebba1d078478f62b397f33c8d",
                HexFormat.of().formatHex(Pin.derive("Password", salt2, 80_000, 64)));
    }

    @Test
    void aHashOpensToItsDigitsAlone() {
        Pin pin = Pin.hash("4711", new SecureRandom());
        assertTrue(pin.matches("4711"));
        assertFalse(pin.matches("4712"));
        assertFalse(pin.setting().contains("4711"));
        assertFalse(pin.setting().equals(Pin.hash("4711", new SecureRandom()).setting()));
        assertFalse(pin.toString().contains("$"), "a log must not hold it");
        assertTrue(new Pin("2468").matches("2468"));
        assertThrows(IllegalArgumentException.class, () -> Pin.hash("12", new SecureRandom()));
        assertThrows(IllegalArgumentException.class, () -> new Pin("a secret"));
    }

    /** A clock set by hand. */
    private static final class SetClock extends Clock {
        private Instant now = Instant.parse("2026-05-04T10:00:00Z");

        @Override
        public Instant instant() {
            return now;
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

    @Test
    void wrongPinsMakeTheWaitGrowAndARightOneEndsIt() {
        var clock = new SetClock();
        var lock = new StaffLock(clock);
        Pin pin = new Pin("2468");
        for (int i = 0; i < 3; i++) {
            assertEquals(Duration.ZERO, lock.left());
            assertFalse(lock.tryOpen(pin, "0000"));
        }
        assertEquals(Duration.ofSeconds(30), lock.left());
        assertFalse(lock.tryOpen(pin, "2468"), "the right one may not be tried during the wait");
        clock.now = clock.now.plusSeconds(30);
        assertFalse(lock.tryOpen(pin, "0000"));
        assertEquals(Duration.ofSeconds(60), lock.left());
        clock.now = clock.now.minus(Duration.ofDays(400));
        assertEquals(Duration.ofSeconds(60), lock.left());
        clock.now = clock.now.plusSeconds(60);
        for (int i = 0; i < 20; i++) {
            assertFalse(lock.tryOpen(pin, "0000"));
            clock.now = clock.now.plus(lock.left());
        }
        assertFalse(lock.tryOpen(pin, "0000"));
        assertEquals(Duration.ofMinutes(15), lock.left());
        clock.now = clock.now.plus(lock.left());
        assertTrue(lock.tryOpen(pin, "2468"));
        assertEquals(Duration.ZERO, lock.left());
    }
}
