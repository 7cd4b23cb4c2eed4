package fencerow.match;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import java.util.Arrays;
import java.util.Locale;
import java.util.function.ToLongFunction;

/**
 * How many times faster the planner is than a general constraint solver (choco-solver) on the same instances: building
 * its model is counted, as is getting ready here; both are warmed up in the same run, and take turns. Prints a table.
 */
public final class RatioBench {
    private static final int WARM_UP = 3000;
    private static final int INSTANCES = 6000;
    /** The planner is too quick for the clock: each of its times is the mean of so many. */
    private static final int REPEATS = 20;
    private static final double TARGET = 100;

    private RatioBench() {}

    /**
     * Runs the bench.
     *
     * @param arguments none
     */
    public static void main(String[] arguments) {
        run(new RandomProblems(1), WARM_UP);
        double[][] micros = run(new RandomProblems(2), INSTANCES);
        double[] ratios = new double[INSTANCES];
        double logs = 0;
        for (int n = 0; n < INSTANCES; n++) {
            ratios[n] = micros[1][n] / micros[0][n];
            logs += Math.log(ratios[n]);
        }
        double mean = Math.exp(logs / INSTANCES);
        System.out.printf(Locale.ROOT, "%-28s %12s %12s%n", INSTANCES + " instances", "median us", "p95 us");
        print("planner", micros[0]);
        print("choco-solver", micros[1]);
        print("times faster", ratios);
        System.out.printf(Locale.ROOT, "times faster, geometric mean %11.0f, target %.0f: %s%n",
                mean, TARGET, mean >= TARGET ? "met" : "missed");
    }

    /** For the planner and for the general solver, microseconds for each instance. */
    private static double[][] run(RandomProblems problems, int count) {
        double[][] micros = new double[2][count];
        for (int n = 0; n < count; n++) {
            Problem problem = problems.next();
            long[] cents = new long[2];
            micros[0][n] = taken(problem, RatioBench::own, cents, 0, REPEATS);
            micros[1][n] = taken(problem, RatioBench::general, cents, 1, 1);
            if (cents[0] != cents[1]) {
                throw new IllegalStateException("instance " + n + ": the planner says " + cents[0]
                        + " cents, the general solver " + cents[1]);
            }
        }
        return micros;
    }

    /** Processor time of the thread, so that a busy machine does not count. */
    private static double taken(
            Problem problem, ToLongFunction<Problem> solve, long[] cents, int place, int repeats) {
        ThreadMXBean threads = ManagementFactory.getThreadMXBean();
        long start = threads.getCurrentThreadCpuTime();
        for (int n = 0; n < repeats; n++) {
            cents[place] = solve.applyAsLong(problem);
        }
        return (threads.getCurrentThreadCpuTime() - start) / 1e3 / repeats;
    }

    private static long own(Problem problem) {
        boolean[] asked = new boolean[problem.headroom().length];
        Arrays.fill(asked, true);
        return new Solver(problem.setup())
                .cheapest(problem.headroom(), asked, new boolean[problem.setup().items().count()])
                .map(Solver.Solution::cents)
                .orElse(Long.MAX_VALUE);
    }

    private static long general(Problem problem) {
        return GeneralSolver.cheapest(problem.setup(), problem.headroom()).orElse(Long.MAX_VALUE);
    }

    private static void print(String what, double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        System.out.printf(Locale.ROOT, "%-28s %12.1f %12.1f%n", what,
                sorted[sorted.length / 2], sorted[(int) (sorted.length * 0.95)]);
    }
}
