package fencerow.storage;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** A few killed bursts; the figures of many are printed under the profile {@code kill}. */
class KilledBurstsTest {
    @TempDir
    Path folder;

    @Test
    void nothingAcknowledgedIsLostAndNothingIsThereByHalf() throws Exception {
        long seed = 20261125;
        KilledBursts result = KilledBursts.run(folder, 4, seed);
        assertEquals(List.of(), result.wrong(), "seed " + seed);
        assertTrue(result.acknowledged() > 0, "nothing was acknowledged in any burst; the test looked at nothing");
    }
}
