package fencerow.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few kiosks for a few seconds; the figures of eight are printed under the profile {@code figures}. */
class ServerFleetTest {
    @TempDir
    Path folder;

    @Test
    void kiosksThatReadAndEditAtOnceLoseNothingThoughTheServerIsKilled() throws Exception {
        assumeTrue(Boolean.getBoolean(TestServer.ASKED_FOR), TestServer.HOW);
        long seed = 20261125;
        Fleet fleet = Fleet.run(folder, 3, Duration.ofSeconds(4), seed, false);
        assertEquals(List.of(), fleet.wrong(), "seed " + seed);
        assertTrue(fleet.kept() > 0 && !fleet.seenMillis().isEmpty(), "nothing was edited; the test looked at nothing");
    }
}
