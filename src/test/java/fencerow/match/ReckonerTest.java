package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What a reckoner knows from other problems of a setup never changes what it answers. */
class ReckonerTest {
    private static final int PROBLEMS = 12;
    private static final int VARIANTS = 30;

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 6);
    }

    /** The problem on other machines: a little more or less in some rows, as one add-on more or less would give. */
    private static List<long[]> outcomes(Problem problem, Random random) {
        List<long[]> outcomes = new ArrayList<>();
        for (long[] base : Outcomes.worst(problem).bases()) {
            long[] other = base.clone();
            for (int r = 0; r < other.length; r++) {
                boolean isLimit = problem.setup().rows().get(r).role() == Setup.Role.LIMIT;
                other[r] += random.nextInt(3) == 0 ? random.nextInt(5) - 2 : 0;
                other[r] = isLimit ? Math.max(0, other[r]) : other[r];
            }
            outcomes.add(other);
        }
        return outcomes;
    }

    private static boolean[] all(Setup setup) {
        boolean[] all = new boolean[new Rows(setup).musts()];
        Arrays.fill(all, true);
        return all;
    }

    private static Optional<Solver.Solution> fresh(Setup setup, long[] headroom) {
        return new Solver(setup).cheapest(headroom, all(setup), new boolean[setup.items().count()]);
    }

    /** By definition: each must-have in turn is kept if it can be met with those kept, at every outcome. */
    private static int missedAfresh(Setup setup, List<long[]> outcomes) {
        boolean[] kept = new boolean[all(setup).length];
        int missed = 0;
        for (int must = 0; must < kept.length; must++) {
            kept[must] = true;
            boolean can = outcomes.stream().allMatch(each -> new Solver(setup).findAny(each, kept).isPresent());
            kept[must] = can;
            missed += can ? 0 : 1;
        }
        return missed;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void answersAreThoseOfOneThatKnowsNothing(long seed) {
        var problems = new RandomProblems(seed);
        var random = new Random(seed);
        for (int n = 0; n < PROBLEMS; n++) {
            Problem problem = problems.next();
            Setup setup = problem.setup();
            var reckoner = new Reckoner(setup);
            for (int v = 0; v < VARIANTS; v++) {
                String where = "seed " + seed + ", problem " + n + ", variant " + v;
                reckoner = random.nextInt(6) == 0 ? reckoner.next() : reckoner;
                List<long[]> outcomes = outcomes(problem, random);
                List<Optional<Solver.Solution>> each =
                        outcomes.stream().map(headroom -> fresh(setup, headroom)).toList();

                Optional<Solver.Solution> cheapest = reckoner.cheapest(outcomes);

                assertEquals(each.stream().allMatch(Optional::isPresent), cheapest.isPresent(), where);
                assertEquals(each.stream().anyMatch(Optional::isPresent), reckoner.isHopeful(outcomes), where);
                assertEquals(missedAfresh(setup, outcomes), reckoner.missed(outcomes), where);
                cheapest.ifPresent(found -> {
                    long cents = each.stream().mapToLong(one -> one.get().cents()).max().orElseThrow();
                    int[] counts = each.stream()
                            .filter(one -> one.get().cents() == cents)
                            .findFirst().orElseThrow().get().counts();
                    assertEquals(cents, found.cents(), where);
                    assertArrayEquals(counts, found.counts(), where);
                });
            }
        }
    }

    @Test
    void variantsAreOftenSettledByOneAnotherAndOftenNot() {
        var random = new Random(1);
        Problem problem = new RandomProblems(1).next();
        List<long[]> seen = new ArrayList<>();
        int harder = 0;
        for (int v = 0; v < 200; v++) {
            long[] one = outcomes(problem, random).get(0);
            harder += seen.stream().anyMatch(other -> isAtMost(one, other)) ? 1 : 0;
            seen.add(one);
        }
        assertTrue(harder > 20 && harder < 190, harder + " of 200 ask more than one before them");
    }

    private static boolean isAtMost(long[] one, long[] other) {
        for (int r = 0; r < one.length; r++) {
            if (one[r] > other[r]) {
                return false;
            }
        }
        return true;
    }
}
