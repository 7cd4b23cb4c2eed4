package fencerow.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

/**
 * An independent part of a problem, answered: what it costs at worst, or whether there is hope, and how many of its
 * must-haves hold. What only reasons ask for is worked out when first asked. Immutable in effect; may be used from any
 * thread.
 */
final class Part {
    private final Problem problem;
    private final Solver solver;
    private final int[] musts;
    private final Outcomes.Bases worst;
    private final Optional<Solver.Solution> solution;
    private final boolean hopeful;
    private final int mustsMet;
    private volatile @Nullable List<Optional<Solver.Solution>> without;

    /** Answers a part. */
    Part(Problem problem) {
        this.problem = problem;
        this.solver = new Solver(problem.setup());
        List<Setup.Row> rows = problem.setup().rows();
        this.musts = IntStream.range(0, rows.size())
                .filter(r -> rows.get(r).role() == Setup.Role.MUST)
                .toArray();
        this.worst = Outcomes.worst(problem);
        this.solution = atWorst(allMusts(), nothing());
        this.hopeful = solution.isPresent()
                || !problem.pieces().isEmpty() && canTurnOut(Outcomes.best(problem));
        this.mustsMet = solution.isPresent() ? musts.length : mostTogether();
    }

    /** The cheapest at the outcome where it costs most; empty where some outcome has none. */
    Optional<Solver.Solution> solution() {
        return solution;
    }

    /** Whether all its must-haves can be met at some outcome. */
    boolean isHopeful() {
        return hopeful;
    }

    /** Whether bounds had to stand for too many outcomes. */
    boolean isBracketed() {
        return worst.bracketed();
    }

    /** How many of its must-haves hold together when each is kept, in the order asked, if it still can be. */
    int mustsMet() {
        return mustsMet;
    }

    /** How many must-haves it has. */
    int mustsAll() {
        return musts.length;
    }

    /** The same as {@link #solution} when the must-have in the row is not asked for. */
    Optional<Solver.Solution> without(int row) {
        List<Optional<Solver.Solution>> known = without;
        if (known == null) {
            List<Optional<Solver.Solution>> found = new ArrayList<>();
            for (int r = 0; r < problem.headroom().length; r++) {
                boolean[] asked = allMusts();
                boolean isMust = asked[r];
                asked[r] = false;
                found.add(isMust ? atWorst(asked, nothing()) : solution);
            }
            known = List.copyOf(found);
            without = known;
        }
        return known.get(row);
    }

    /** The same as {@link #solution} without the items for which {@code forbidden} holds. */
    Optional<Solver.Solution> withoutItems(boolean[] forbidden) {
        return atWorst(allMusts(), forbidden);
    }

    /** Rows of must-haves that cannot be met together, though without any one of them the rest can. */
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

    /** The headroom at an outcome where the must-haves in the rows cannot be met. */
    long[] failing(int[] rows) {
        boolean[] asked = nothingAsked();
        Arrays.stream(rows).forEach(row -> asked[row] = true);
        return worst.bases().stream()
                .filter(each -> !solver.isFeasible(each, asked))
                .findFirst()
                .orElse(problem.headroom());
    }

    /** Its unverified pieces. */
    List<Problem.Piece> pieces() {
        return problem.pieces();
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
        boolean[] asked = nothingAsked();
        for (int row : musts) {
            asked[row] = true;
        }
        return asked;
    }

    private boolean[] nothingAsked() {
        return new boolean[problem.headroom().length];
    }

    private boolean[] nothing() {
        return new boolean[problem.setup().items().count()];
    }

    private Optional<Solver.Solution> atWorst(boolean[] asked, boolean[] forbidden) {
        Optional<Solver.Solution> dearest = Optional.empty();
        for (long[] each : worst.bases()) {
            Optional<Solver.Solution> found = solver.cheapest(each, asked, forbidden);
            if (found.isEmpty()) {
                return found;
            }
            if (dearest.isEmpty() || found.get().cents() > dearest.get().cents()) {
                dearest = found;
            }
        }
        return dearest;
    }

    private boolean isFeasible(boolean[] asked) {
        return worst.bases().stream().allMatch(each -> solver.isFeasible(each, asked));
    }

    private boolean canTurnOut(Outcomes.Bases bases) {
        return bases.bases().stream().anyMatch(each -> solver.isFeasible(each, allMusts()));
    }

    private int mostTogether() {
        boolean[] asked = nothingAsked();
        int count = 0;
        for (int row : musts) {
            asked[row] = true;
            if (isFeasible(asked)) {
                count++;
            } else {
                asked[row] = false;
            }
        }
        return count;
    }
}
