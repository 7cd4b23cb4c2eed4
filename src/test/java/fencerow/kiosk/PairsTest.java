package fencerow.kiosk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** That the walk leaves out no two settings together. */
class PairsTest {
    private static final List<Integer> SIZES = List.of(3, 2, 3, 2, 3);

    @Test
    void anyTwoValuesMeetWhateverTheSeed() {
        for (long seed = 0; seed < 50; seed++) {
            List<List<Integer>> picked = Pairs.of(SIZES, seed);
            Set<List<Integer>> met = new HashSet<>();
            for (List<Integer> each : picked) {
                for (int i = 0; i < SIZES.size(); i++) {
                    for (int j = i + 1; j < SIZES.size(); j++) {
                        met.add(List.of(i, each.get(i), j, each.get(j)));
                    }
                }
            }
            // The sum over all pairs of factors of the product of their sizes.
            assertEquals(67, met.size(), "seed " + seed);
            assertTrue(picked.size() <= 16, "seed " + seed + " takes " + picked.size() + " of 108");
        }
    }
}
