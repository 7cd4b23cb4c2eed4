package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.Random;
import java.util.stream.LongStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * The planner's optimum against that of a general constraint solver (choco-solver) on the same instances: up to 14
 * items, counts to 3, exclusions, shared resources, alternatives, three working states; in the second set unverified
 * pieces and a budget too. The large run: {@code -Dfencerow.instances=2500}, 20,000 in the first set and 20,000 in the
 * second.
 */
class SolverAgainstGeneralSolverTest {
    private static final int INSTANCES_PER_SEED = Integer.getInteger("fencerow.instances", 100);

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 8);
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void sameCheapestPriceAndSameFeasibility(long seed) {
        var problems = new RandomProblems(seed);
        for (int n = 0; n < INSTANCES_PER_SEED; n++) {
            Problem problem = problems.next();
            assertEquals(
                    GeneralSolver.cheapest(problem.setup(), problem.headroom()),
                    own(problem, problem.headroom()),
                    "seed " + seed + ", instance " + n);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void partsTogetherCostWhatTheWholeCostsAtItsWorstOutcomeAndStayWithinTheSameBudget(long seed) {
        var problems = new RandomProblems(1000 + seed);
        var budgets = new Random(seed);
        for (int n = 0; n < INSTANCES_PER_SEED; n++) {
            Problem problem = problems.next();
            List<long[]> all = outcomes(problem);
            String where = "seed " + (1000 + seed) + ", instance " + n;
            long[] prices = all.stream()
                    .mapToLong(each -> GeneralSolver.cheapest(problem.setup(), each).orElse(Long.MAX_VALUE))
                    .toArray();
            List<Part> parts = parts(problem);
            assertEquals(LongStream.of(prices).max().orElseThrow(), cents(parts), where);
            assertEquals(
                    LongStream.of(prices).anyMatch(price -> price < Long.MAX_VALUE),
                    new Reckoner(problem.setup()).isHopeful(Outcomes.best(problem).bases()),
                    where);
            long budget = 5000L * budgets.nextInt(120);
            assertEquals(
                    all.stream().allMatch(each -> GeneralSolver.isPossibleFor(problem.setup(), each, budget)),
                    cents(parts) <= budget,
                    where + ", budget " + budget);
        }
    }

    private static List<Part> parts(Problem problem) {
        return Split.of(problem).stream().map(cut -> new Part(cut.problem())).toList();
    }

    private static long cents(List<Part> parts) {
        return parts.stream().allMatch(part -> part.solution().isPresent())
                ? parts.stream().mapToLong(part -> part.solution().orElseThrow().cents()).sum()
                : Long.MAX_VALUE;
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void outcomesTriedHaveTheWorstAndTheBestOfAllAmongThem(long seed) {
        var problems = new RandomProblems(2000 + seed);
        for (int n = 0; n < INSTANCES_PER_SEED / 4; n++) {
            Problem problem = problems.next();
            List<long[]> all = outcomes(problem);
            String where = "seed " + (2000 + seed) + ", instance " + n;
            assertEquals(priced(problem, all).max(), priced(problem, tried(Outcomes.worst(problem))).max(), where);
            assertEquals(priced(problem, all).min(), priced(problem, tried(Outcomes.best(problem))).min(), where);
        }
    }

    private static List<long[]> tried(Outcomes.Bases bases) {
        assertFalse(bases.bracketed(), "these instances are small enough to be tried one by one");
        return bases.bases();
    }

    private static LongStream priced(Problem problem, List<long[]> bases) {
        return bases.stream().mapToLong(base -> own(problem, base).orElse(Long.MAX_VALUE));
    }

    /** Every outcome of the pieces; a machine as it stands breaks no limit. */
    private static List<long[]> outcomes(Problem problem) {
        List<long[]> all = List.of(problem.headroom());
        for (Problem.Piece piece : problem.pieces()) {
            List<long[]> next = new ArrayList<>();
            for (long[] base : all) {
                for (Sparse state : piece.states()) {
                    long[] sum = base.clone();
                    state.addTo(sum);
                    next.add(sum);
                }
            }
            all = next;
        }
        for (long[] each : all) {
            for (int r = 0; r < each.length; r++) {
                boolean isLimit = problem.setup().rows().get(r).role() == Setup.Role.LIMIT;
                each[r] = isLimit ? Math.max(0, each[r]) : each[r];
            }
        }
        return all;
    }

    @Test
    void generatorGivesBothFeasibleAndInfeasibleInstances() {
        var problems = new RandomProblems(7);
        int feasible = 0;
        for (int n = 0; n < 200; n++) {
            Problem problem = problems.next();
            feasible += own(problem, problem.headroom()).isPresent() ? 1 : 0;
        }
        assertTrue(feasible > 30 && feasible < 170, feasible + " of 200 are feasible");
    }

    @Test
    void generatorGivesProblemsOfSeveralParts() {
        var problems = new RandomProblems(8);
        int parts = 0;
        for (int n = 0; n < 200; n++) {
            parts += parts(problems.next()).size();
        }
        assertTrue(parts > 220, parts + " parts in 200 problems");
    }

    private static OptionalLong own(Problem problem, long[] headroom) {
        boolean[] asked = new boolean[headroom.length];
        Arrays.fill(asked, true);
        return new Solver(problem.setup())
                .cheapest(headroom, asked, new boolean[problem.setup().items().count()])
                .map(solution -> OptionalLong.of(solution.cents()))
                .orElse(OptionalLong.empty());
    }
}
