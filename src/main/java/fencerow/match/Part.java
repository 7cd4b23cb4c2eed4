package fencerow.match;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.IntStream;

/**
 * An independent part of a problem, answered: what it costs at worst, and what reasons ask for, worked out when first
 * asked. Immutable in effect; may be used from any thread.
 */
final class Part {
    private final Problem problem;
    private final Solver solver;
    private final int musts;
    private final Outcomes.Bases worst;
    private final Optional<Solver.Solution> solution;
    private final Map<List<Integer>, Optional<Solver.Solution>> without = new ConcurrentHashMap<>();

    /** Answers a part. */
    Part(Problem problem) {
        this.problem = problem;
        this.solver = new Solver(problem.setup());
        this.musts = solver.rows().musts();
        this.worst = Outcomes.worst(problem);
        this.solution = atWorst(allMusts(), nothing());
    }

    /** The cheapest at the outcome where it costs most; empty where some outcome has none. */
    Optional<Solver.Solution> solution() {
        return solution;
    }

    /** The same as {@link #solution} when some must-haves are not asked for. */
    Optional<Solver.Solution> without(List<Integer> dropped) {
        return without.computeIfAbsent(dropped, some -> {
            boolean[] asked = allMusts();
            some.forEach(must -> asked[must] = false);
            return atWorst(asked, nothing());
        });
    }

    /** The same as {@link #solution} without the items for which {@code forbidden} holds. */
    Optional<Solver.Solution> withoutItems(boolean[] forbidden) {
        return atWorst(allMusts(), forbidden);
    }

    /** Must-haves that cannot be met together, though without any one of them the rest can. */
    int[] irreducible() {
        boolean[] asked = allMusts();
        for (int r = asked.length - 1; r >= 0; r--) {
            if (asked[r]) {
                asked[r] = false;
                if (isFeasible(asked)) {
                    asked[r] = true;
                }
            }
        }
        return IntStream.range(0, asked.length).filter(r -> asked[r]).toArray();
    }

    /** The headroom of each row at an outcome where the must-haves cannot be met. */
    long[] failing(int[] some) {
        boolean[] asked = new boolean[musts];
        Arrays.stream(some).forEach(must -> asked[must] = true);
        return worst.bases().stream()
                .filter(each -> solver.findAny(each, asked).isEmpty())
                .findFirst()
                .orElse(problem.headroom());
    }

    /** The least it costs, in cents, with the piece at its best and all others at their worst; at least so much. */
    Optional<Long> centsWithBest(int piece) {
        return Outcomes.bestOf(problem, 1 << piece).bases().stream()
                .map(each -> solver.cheapest(each, allMusts(), nothing()))
                .map(found -> found.map(Solver.Solution::cents).orElse(Long.MAX_VALUE))
                .max(Long::compare)
                .filter(cents -> cents < Long.MAX_VALUE);
    }

    /** The smallest set of pieces which, if they turn out well, let all must-haves be met; as a bit mask. */
    int fewestThatFlip() {
        return new Flips(problem.pieces().size(), mask -> canTurnOut(Outcomes.bestOf(problem, mask))).fewest();
    }

    private boolean[] allMusts() {
        boolean[] asked = new boolean[musts];
        Arrays.fill(asked, true);
        return asked;
    }

    private boolean[] nothing() {
        return new boolean[problem.setup().items().count()];
    }

    private Optional<Solver.Solution> atWorst(boolean[] asked, boolean[] forbidden) {
        return solver.rows().dearest(worst.bases(), asked, each -> solver.cheapest(each, asked, forbidden));
    }

    private boolean isFeasible(boolean[] asked) {
        return worst.bases().stream().allMatch(each -> solver.findAny(each, asked).isPresent());
    }

    private boolean canTurnOut(Outcomes.Bases bases) {
        return bases.bases().stream().anyMatch(each -> solver.findAny(each, allMusts()).isPresent());
    }
}
