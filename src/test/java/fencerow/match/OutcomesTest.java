package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Which combinations of what unverified pieces may turn out to be stand for the worst and the best. */
class OutcomesTest {
    static LongStream seeds() {
        return LongStream.rangeClosed(1, 5);
    }

    private static Sparse adds(long... amounts) {
        return Sparse.of(amounts);
    }

    private static Problem.Piece piece(Sparse... states) {
        return new Problem.Piece(0, List.of(states));
    }

    private static Problem problem(long[] headroom, List<Problem.Piece> pieces) {
        var none = new Setup.Items(new long[0], new int[0], new int[0], new int[0][]);
        List<Setup.Row> rows = IntStream.range(0, headroom.length)
                .mapToObj(r -> new Setup.Row(Setup.Role.MUST, r, Sparse.NOTHING))
                .toList();
        return new Problem(new Setup(none, rows), headroom, pieces);
    }

    private static Problem problem(int rows, Problem.Piece... pieces) {
        return problem(new long[rows], List.of(pieces));
    }

    private static List<List<Long>> values(Outcomes.Bases bases) {
        return bases.bases().stream().map(base -> LongStream.of(base).boxed().toList()).toList();
    }

    /** Gives in one row what it takes in the other, so that neither of its states is the worse one. */
    private static Problem.Piece tradeOff() {
        return piece(adds(0, 1), adds(1, 0));
    }

    private static List<Problem.Piece> tradeOffs(int count) {
        return IntStream.range(0, count).mapToObj(p -> tradeOff()).toList();
    }

    @Test
    void knownMachineHasOneOutcome() {
        assertEquals(List.of(List.of(3L, -2L)), values(Outcomes.worst(problem(new long[] {3, -2}, List.of()))));
    }

    @Test
    void ofStatesThatOnlyAddOneIsTheWorstAndOneTheBestWhateverTheirOrder() {
        Problem rising = problem(2, piece(Sparse.NOTHING, adds(1, 0), adds(2, 0)));
        Problem falling = problem(2, piece(adds(2, 0), adds(1, 0), Sparse.NOTHING));

        for (Problem each : List.of(rising, falling)) {
            assertEquals(List.of(List.of(0L, 0L)), values(Outcomes.worst(each)));
            assertEquals(List.of(List.of(2L, 0L)), values(Outcomes.best(each)));
        }
    }

    @Test
    void statesThatAreEachBetterInSomethingAreBothTried() {
        Problem problem = problem(2, tradeOff());

        assertEquals(List.of(List.of(0L, 1L), List.of(1L, 0L)), values(Outcomes.worst(problem)));
        assertEquals(List.of(List.of(0L, 1L), List.of(1L, 0L)), values(Outcomes.best(problem)));
    }

    @Test
    void piecesOfTheMaskAreAtTheirBestAndAllOthersAtTheirWorst() {
        Problem problem = problem(
                3,
                piece(Sparse.NOTHING, adds(1, 0, 0)),
                piece(Sparse.NOTHING, adds(0, 1, 0)),
                piece(Sparse.NOTHING, adds(0, 0, 1)));

        assertEquals(List.of(List.of(0L, 0L, 0L)), values(Outcomes.bestOf(problem, 0)));
        assertEquals(List.of(List.of(0L, 1L, 0L)), values(Outcomes.bestOf(problem, 0b010)));
        assertEquals(List.of(List.of(1L, 0L, 1L)), values(Outcomes.bestOf(problem, 0b101)));
    }

    @Test
    void sixPiecesOfTwoStatesAreTriedOneByOneAndSevenAreNot() {
        Outcomes.Bases six = Outcomes.worst(problem(new long[2], tradeOffs(6)));
        Outcomes.Bases seven = Outcomes.worst(problem(new long[2], tradeOffs(7)));

        assertFalse(six.bracketed());
        assertEquals(64, six.bases().size());
        six.bases().forEach(base -> assertEquals(6, base[0] + base[1]));
        assertTrue(seven.bracketed());
        assertEquals(1, seven.bases().size());
    }

    /** Seven pieces: nothing of either row at the worst, seven of both at the best; two at their best give two. */
    @Test
    void boundsTakeTheWorstOrTheBestOfEachPieceRowByRow() {
        Problem problem = problem(new long[] {-4, 10}, tradeOffs(7));

        assertEquals(List.of(List.of(-4L, 10L)), values(Outcomes.worst(problem)));
        assertEquals(List.of(List.of(3L, 17L)), values(Outcomes.best(problem)));
        assertEquals(List.of(List.of(-2L, 12L)), values(Outcomes.bestOf(problem, 0b11)));
        assertArrayEquals(new long[] {-4, 10}, problem.headroom());
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void noRealCombinationIsWorseThanTheWorstOrBetterThanTheBestInAnyRow(long seed) {
        var random = new Random(seed);
        for (int n = 0; n < 60; n++) {
            int rows = 1 + random.nextInt(4);
            List<Problem.Piece> pieces = new ArrayList<>();
            for (int p = random.nextInt(10); p >= 0; p--) {
                pieces.add(piece(someState(rows, random), someState(rows, random), someState(rows, random)));
            }
            Problem problem = problem(new long[rows], pieces);
            List<long[]> worst = Outcomes.worst(problem).bases();
            List<long[]> best = Outcomes.best(problem).bases();
            for (int c = 0; c < 50; c++) {
                long[] real = new long[rows];
                pieces.forEach(piece -> piece.states().get(random.nextInt(3)).addTo(real));
                String where = "seed " + seed + ", problem " + n;
                assertTrue(worst.stream().anyMatch(base -> isAtMost(base, real)), where);
                assertTrue(best.stream().anyMatch(base -> isAtMost(real, base)), where);
            }
        }
    }

    private static Sparse someState(int rows, Random random) {
        return Sparse.of(LongStream.generate(() -> random.nextInt(3)).limit(rows).toArray());
    }

    private static boolean isAtMost(long[] low, long[] high) {
        return IntStream.range(0, low.length).allMatch(r -> low[r] <= high[r]);
    }
}
