package fencerow.match;

import java.util.function.IntPredicate;

/**
 * Looks for the fewest pieces that turn the answer.
 *
 * @param pieces how many there are
 * @param turns  whether the pieces of a bit mask turn it; more pieces never turn it back
 */
record Flips(int pieces, IntPredicate turns) {
    /** Up to so many pieces, every set of them is tried. */
    private static final int MOST_IN_ALL_SETS = 12;
    /** Sets larger than this tell a shopper nothing, so none is looked for. */
    private static final int LARGEST_SET = 6;

    /** A smallest set as a bit mask; with very many pieces only one from which none can be left out. */
    int fewest() {
        if (pieces <= MOST_IN_ALL_SETS) {
            for (int size = 1; size <= Math.min(pieces, LARGEST_SET); size++) {
                for (int mask = 1; mask < 1 << pieces; mask++) {
                    if (Integer.bitCount(mask) == size && turns.test(mask)) {
                        return mask;
                    }
                }
            }
        }
        return shrunk();
    }

    /** Leaves out whatever can stay at its worst. */
    private int shrunk() {
        int told = Math.min(pieces, Integer.SIZE - 2);
        int mask = (1 << told) - 1;
        for (int p = 0; p < told; p++) {
            int without = mask & ~(1 << p);
            if (turns.test(without)) {
                mask = without;
            }
        }
        return mask;
    }
}
