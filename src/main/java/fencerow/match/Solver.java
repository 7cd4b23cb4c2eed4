package fencerow.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest counts of items with which every active row holds, exactly.
 *
 * <p>Raise-only search: counts start at nothing; while some active row is short, any completion must raise one of that
 * row's providers, so those are the branches; after a branch its item is capped where it stood, so no combination is
 * tried twice. A row out of reach, or a price that cannot beat the best found, ends a branch. Ties go to fewer pieces,
 * then less fitting time, then the earlier items. Confined to one call; not for sharing.
 */
final class Solver {
    private final Problem problem;
    private final boolean[] activeMusts;
    private final int itemCount;
    private final int[] counts;
    private final int[] caps;
    private final long[] values;
    private long cost;
    private @Nullable Solution best;

    /** Counts for each item with what they come to. */
    record Solution(int[] counts, long cents, int pieces, int minutes) {
        private boolean beats(Solution other) {
            if (cents != other.cents) {
                return cents < other.cents;
            }
            if (pieces != other.pieces) {
                return pieces < other.pieces;
            }
            if (minutes != other.minutes) {
                return minutes < other.minutes;
            }
            return Arrays.compare(other.counts, counts) < 0;
        }
    }

    private Solver(Problem problem, long[] base, boolean[] activeMusts, boolean[] forbidden) {
        this.problem = problem;
        this.activeMusts = activeMusts;
        this.itemCount = problem.items().size();
        this.counts = new int[itemCount];
        this.caps = new int[itemCount];
        for (int i = 0; i < itemCount; i++) {
            caps[i] = forbidden[i] ? 0 : problem.items().get(i).max();
        }
        this.values = base.clone();
    }

    /**
     * Solves one instance.
     *
     * @param base        for each row what the unit gives by itself
     * @param activeMusts for each requirement of the needs, whether it is asked for
     * @param forbidden   for each item, whether it may not be used
     */
    static Optional<Solution> solve(Problem problem, long[] base, boolean[] activeMusts, boolean[] forbidden) {
        var solver = new Solver(problem, base, activeMusts, forbidden);
        solver.search();
        return Optional.ofNullable(solver.best);
    }

    /** Whether the row must hold at this point. */
    private boolean isActive(Problem.Row row) {
        return switch (row.role()) {
            case MUST -> activeMusts[row.requirement()];
            case NEED -> counts[row.owner()] > 0;
            case LIMIT -> true;
            case WISH -> false;
        };
    }

    private boolean canRaise(int item, Problem.Row row) {
        return row.coefficient()[item] > 0 && counts[item] < caps[item] && !isExcluded(item);
    }

    private boolean isExcluded(int item) {
        boolean[] excludedBy = problem.excludes()[item];
        for (int other = 0; other < itemCount; other++) {
            if (excludedBy[other] && counts[other] > 0) {
                return true;
            }
        }
        return false;
    }

    private void search() {
        int branchRow = -1;
        int fewestProviders = Integer.MAX_VALUE;
        double bound = 0;
        for (int r = 0; r < values.length; r++) {
            Problem.Row row = problem.rows().get(r);
            long deficit = row.bound() - values[r];
            if (deficit <= 0 || !isActive(row)) {
                continue;
            }
            int providers = 0;
            long reach = 0;
            double cheapest = Double.POSITIVE_INFINITY;
            for (int i = 0; i < itemCount; i++) {
                if (canRaise(i, row)) {
                    providers++;
                    long each = row.coefficient()[i];
                    reach += each * (caps[i] - counts[i]);
                    cheapest = Math.min(cheapest, priceOfReaching(i, each, deficit));
                }
            }
            if (reach < deficit) {
                return;
            }
            bound = Math.max(bound, cheapest);
            if (providers < fewestProviders) {
                fewestProviders = providers;
                branchRow = r;
            }
        }
        if (branchRow < 0) {
            record();
        } else if (best == null || cost + Math.floor(bound) <= best.cents()) {
            branch(problem.rows().get(branchRow));
        }
    }

    /** A floor under the price of closing the deficit with this item alone; mixing items cannot be cheaper a unit. */
    private double priceOfReaching(int item, long each, long deficit) {
        return problem.items().get(item).cents() * ((double) deficit / each);
    }

    private void branch(Problem.Row row) {
        int[] providers = cheapestFirst(row);
        int[] capsBefore = new int[providers.length];
        for (int p = 0; p < providers.length; p++) {
            int item = providers[p];
            capsBefore[p] = caps[item];
            raise(item, 1);
            search();
            raise(item, -1);
            caps[item] = counts[item];
        }
        for (int p = 0; p < providers.length; p++) {
            caps[providers[p]] = capsBefore[p];
        }
    }

    private int[] cheapestFirst(Problem.Row row) {
        var providers = new ArrayList<Integer>();
        for (int i = 0; i < itemCount; i++) {
            if (canRaise(i, row)) {
                providers.add(i);
            }
        }
        providers.sort(Comparator.comparingLong(i -> problem.items().get(i).cents()));
        return providers.stream().mapToInt(Integer::intValue).toArray();
    }

    private void raise(int item, int by) {
        counts[item] += by;
        cost += by * problem.items().get(item).cents();
        for (int r = 0; r < values.length; r++) {
            values[r] += by * problem.rows().get(r).coefficient()[item];
        }
    }

    private void record() {
        int pieces = 0;
        int minutes = 0;
        for (int i = 0; i < itemCount; i++) {
            pieces += counts[i];
            minutes += counts[i] * problem.items().get(i).minutes();
        }
        var found = new Solution(counts.clone(), cost, pieces, minutes);
        if (best == null || found.beats(best)) {
            best = found;
        }
    }
}
