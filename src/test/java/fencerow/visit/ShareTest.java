package fencerow.visit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.stat.interval.ConfidenceInterval;
import org.apache.commons.math3.stat.interval.WilsonScoreInterval;
import org.junit.jupiter.api.Test;

class ShareTest {
    /** Held against the Wilson score interval of Apache Commons Math 3. */
    @Test
    void boundsAreThoseOfAGeneralLibrary() {
        long seed = 7;
        SplittableRandom random = new SplittableRandom(seed);
        WilsonScoreInterval library = new WilsonScoreInterval();
        for (int i = 0; i < 2_000; i++) {
            int of = random.nextInt(1, 5_000);
            int count = random.nextInt(0, of + 1);
            ConfidenceInterval wanted = library.createInterval(of, count, 0.95);
            Share share = new Share(count, of);
            assertEquals(wanted.getLowerBound(), share.low(), 1e-9, count + " of " + of + ", seed " + seed);
            assertEquals(wanted.getUpperBound(), share.high(), 1e-9, count + " of " + of + ", seed " + seed);
        }
    }

    /** R. G. Newcombe, Statistics in Medicine 17 (1998), 857-872, table I, method 3 (from memory). */
    @Test
    void boundsAreThosePublished() {
        assertEquals(0.2553, new Share(81, 263).low(), 5e-5);
        assertEquals(0.3662, new Share(81, 263).high(), 5e-5);
        assertEquals(0.0624, new Share(15, 148).low(), 5e-5);
        assertEquals(0.1605, new Share(15, 148).high(), 5e-5);
        assertEquals(0, new Share(0, 20).low());
        assertEquals(0.1611, new Share(0, 20).high(), 5e-5);
        assertEquals(0.0061, new Share(1, 29).low(), 5e-5);
        assertEquals(0.1718, new Share(1, 29).high(), 5e-5);
    }

    @Test
    void moreOfTheSameSaysItMoreSurely() {
        Share few = new Share(3, 10);
        Share many = new Share(30, 100);
        assertTrue(few.low() < many.low() && many.high() < few.high());
    }

    @Test
    void whatIsNoShareIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new Share(0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Share(4, 3));
        assertThrows(IllegalArgumentException.class, () -> new Share(-1, 3));
    }
}
