package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalLong;
import java.util.stream.LongStream;
import org.chocosolver.solver.Model;
import org.chocosolver.solver.Solution;
import org.chocosolver.solver.constraints.Constraint;
import org.chocosolver.solver.variables.IntVar;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The planner's optimum against that of a general constraint solver (choco-solver) on the same instances. */
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
                    general(problem, problem.base()),
                    own(problem, problem.base()),
                    "seed " + seed + ", instance " + n);
        }
    }

    @ParameterizedTest
    @MethodSource("seeds")
    void worstOutcomeOfUnverifiedPiecesIsTheWorstOfAllOutcomes(long seed) {
        var problems = new RandomProblems(1000 + seed);
        for (int n = 0; n < INSTANCES_PER_SEED / 4; n++) {
            Problem problem = problems.next();
            List<long[]> all = allOutcomes(problem, 0, problem.base());
            String where = "seed " + (1000 + seed) + ", instance " + n;
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

    private static List<long[]> allOutcomes(Problem problem, int piece, long[] base) {
        if (piece == problem.pieces().size()) {
            return List.of(base);
        }
        var all = new ArrayList<long[]>();
        for (long[] contribution : problem.pieces().get(piece).contribution()) {
            long[] next = base.clone();
            for (int r = 0; r < next.length; r++) {
                next[r] += contribution[r];
            }
            all.addAll(allOutcomes(problem, piece + 1, next));
        }
        return all;
    }

    @Test
    void generatorGivesBothFeasibleAndInfeasibleInstances() {
        var problems = new RandomProblems(7);
        int feasible = 0;
        for (int n = 0; n < 200; n++) {
            Problem problem = problems.next();
            feasible += own(problem, problem.base()).isPresent() ? 1 : 0;
        }
        assertTrue(feasible > 30 && feasible < 170, feasible + " of 200 are feasible");
    }

    private static OptionalLong own(Problem problem, long[] base) {
        boolean[] active = new boolean[problem.setup().rows().size()];
        Arrays.fill(active, true);
        return Solver.solve(problem.setup(), base, active)
                .map(solution -> OptionalLong.of(solution.cents()))
                .orElse(OptionalLong.empty());
    }

    private static OptionalLong general(Problem problem, long[] base) {
        var model = new Model();
        IntVar[] counts = new IntVar[problem.setup().items().size()];
        int[] cents = new int[counts.length];
        int most = 0;
        for (int i = 0; i < counts.length; i++) {
            Setup.Candidate candidate = problem.setup().items().get(i);
            counts[i] = model.intVar("x" + i, 0, candidate.max());
            cents[i] = (int) candidate.cents();
            most += cents[i] * candidate.max();
        }
        for (int r = 0; r < problem.setup().rows().size(); r++) {
            Setup.Row row = problem.setup().rows().get(r);
            int[] coefficient = LongStream.of(row.coefficient()).mapToInt(Math::toIntExact).toArray();
            Constraint holds = model.scalar(counts, coefficient, ">=", (int) (row.bound() - base[r]));
            if (row.role() == Setup.Role.NEED) {
                model.ifThen(model.arithm(counts[row.owner()], ">", 0), holds);
            } else {
                holds.post();
            }
        }
        for (int i = 0; i < counts.length; i++) {
            for (int j = i + 1; j < counts.length; j++) {
                if (problem.setup().excludes(i, j)) {
                    model.or(model.arithm(counts[i], "=", 0), model.arithm(counts[j], "=", 0)).post();
                }
            }
        }
        IntVar price = model.intVar("price", 0, Math.max(1, most));
        model.scalar(counts, cents, "=", price).post();
        Solution best = model.getSolver().findOptimalSolution(price, false);
        return best == null ? OptionalLong.empty() : OptionalLong.of(best.getIntVal(price));
    }
}
