package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.function.IntPredicate;
import org.junit.jupiter.api.Test;

/** The fewest unverified pieces that turn an answer; sets are bit masks. */
class FlipsTest {
    private static int fewest(int pieces, IntPredicate turns) {
        return new Flips(pieces, turns).fewest();
    }

    /** All pieces from the first to the last, both among them. */
    private static int pieces(int first, int last) {
        int mask = 0;
        for (int p = first; p <= last; p++) {
            mask += 1 << p;
        }
        return mask;
    }

    private static IntPredicate anyOf(int... sets) {
        return mask -> {
            for (int set : sets) {
                if ((mask & set) == set) {
                    return true;
                }
            }
            return false;
        };
    }

    @Test
    void onePieceThatTurnsItIsFoundWhereverItStands() {
        assertEquals(0b1, fewest(1, anyOf(0b1)));
        assertEquals(0b010, fewest(3, anyOf(0b010)));
        assertEquals(pieces(11, 11), fewest(12, anyOf(pieces(11, 11))));
    }

    @Test
    void fewPiecesAreNamedBeforeManyThoughTheManyStandFirst() {
        assertEquals(0b1000, fewest(4, anyOf(0b0011, 0b1000)));
        assertEquals(0b1, fewest(12, anyOf(0b1, pieces(10, 11))));
    }

    @Test
    void piecesThatTurnItOnlyTogetherAreNamedTogether() {
        assertEquals(0b101, fewest(3, anyOf(0b101)));
        assertEquals(0b111, fewest(3, anyOf(0b111)));
    }

    @Test
    void sixPiecesAreStillFoundBeforeSeven() {
        assertEquals(pieces(0, 5), fewest(12, anyOf(pieces(0, 5), pieces(5, 11))));
    }

    @Test
    void setOfSevenIsOneFromWhichNoneCanBeLeftOut() {
        assertEquals(pieces(1, 7), fewest(9, anyOf(pieces(1, 7))));
    }

    @Test
    void withVeryManyPiecesTheSetIsOneFromWhichNoneCanBeLeftOut() {
        assertEquals(pieces(11, 12), fewest(13, anyOf(0b1, pieces(11, 12))));
        assertEquals(pieces(3, 3), fewest(20, anyOf(pieces(3, 3))));
    }

    @Test
    void ofMorePiecesThanAMaskHoldsTheFirstThirtyAreLookedAt() {
        assertEquals(pieces(0, 29), fewest(40, anyOf(pieces(0, 29))));
        assertEquals(pieces(29, 29), fewest(40, anyOf(pieces(29, 29))));
    }
}
