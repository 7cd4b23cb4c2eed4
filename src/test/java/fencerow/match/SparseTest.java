package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.List;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Numbers at a few places count as if all places were written out. */
class SparseTest {
    private static final int PLACES = 8;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 5);
    }

    private static long[] some(Random random) {
        return LongStream.generate(() -> random.nextInt(3) == 0 ? random.nextInt(7) - 3 : 0).limit(PLACES).toArray();
    }

    private static long[] written(Sparse sparse, int places) {
        long[] all = new long[places];
        sparse.addTo(all);
        return all;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void sumIsThatOfAllPlacesAndNamesEachPlaceOnceRising(long seed) {
        var random = new Random(seed);
        for (int n = 0; n < 200; n++) {
            long[] one = some(random);
            long[] other = some(random);
            String where = "seed " + seed + ": " + Arrays.toString(one) + " and " + Arrays.toString(other);

            Sparse sum = Sparse.of(one).plus(Sparse.of(other));

            for (int p = 0; p < PLACES; p++) {
                assertEquals(one[p] + other[p], sum.at(p), where);
            }
            int[] rising = Arrays.stream(sum.places()).distinct().sorted().toArray();
            assertArrayEquals(rising, sum.places(), where);
        }
    }

    @Test
    void someOfThePlacesAreNumberedByWhereTheyStandAmongThem() {
        Sparse within = Sparse.of(new long[] {5, 0, 7, -2, 0, 9}).within(new int[] {1, 2, 5});

        assertArrayEquals(new int[] {1, 2}, within.places());
        assertArrayEquals(new long[] {0, 7, 9}, written(within, 3));
    }

    /** 0 or 2 in the first row, 3 or 1 in the second: at least 0 and 1, and beyond that 0 and 2, or 2 and 0. */
    @Test
    void whatAFeatureAddsIsTheLeastInEachRowAndWhatEachStateAddsBeyond() {
        Contribution adds = Contribution.of(List.of(Sparse.of(new long[] {0, 3}), Sparse.of(new long[] {2, 1})));

        assertArrayEquals(new long[] {0, 1}, written(adds.known(), 2));
        assertArrayEquals(new long[] {0, 2}, written(adds.open().get(0), 2));
        assertArrayEquals(new long[] {2, 0}, written(adds.open().get(1), 2));
    }

    @Test
    void whatMayBeMattersOnlyToRowsItChanges() {
        Contribution adds =
                Contribution.of(List.of(Sparse.of(new long[] {4, 0, 0}), Sparse.of(new long[] {4, 0, 6})));

        Contribution untouched = adds.within(new int[] {0, 1});
        Contribution touched = adds.within(new int[] {1, 2});

        assertEquals(List.of(), untouched.open());
        assertArrayEquals(new long[] {4, 0}, written(untouched.known(), 2));
        assertEquals(2, touched.open().size());
        assertArrayEquals(new long[] {0, 0}, written(touched.open().get(0), 2));
        assertArrayEquals(new long[] {0, 6}, written(touched.open().get(1), 2));
    }
}
