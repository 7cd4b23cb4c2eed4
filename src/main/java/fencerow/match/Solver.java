package fencerow.match;

import java.util.Arrays;
import java.util.Optional;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest counts of items with which every active row holds, exactly.
 *
 * <p>Raise-only search: counts start at nothing; while some active row is short, any completion must raise one of that
 * row's helpers, so those are the branches; after a branch its item is capped where it stood, so no combination is
 * tried twice. A row out of reach, or a price that cannot beat the best found, ends a branch. Ties go to fewer pieces,
 * then less fitting time, then the earlier items. Confined to one call; not for sharing.
 */
final class Solver {
    private final Setup setup;
    private final boolean[] activeMusts;
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

    private Solver(Setup setup, long[] base, boolean[] activeMusts) {
        this.setup = setup;
        this.activeMusts = activeMusts;
        this.counts = new int[setup.items().size()];
        this.caps = new int[counts.length];
        for (int i = 0; i < caps.length; i++) {
            caps[i] = setup.items().get(i).max();
        }
        this.values = base.clone();
    }

    /**
     * Solves one instance.
     *
     * @param base        for each row what the unit gives by itself
     * @param activeMusts for each requirement of the needs, whether it is asked for
     */
    static Optional<Solution> solve(Setup setup, long[] base, boolean[] activeMusts) {
        return new Solver(setup, base, activeMusts).cheapest();
    }

    /** Solves one instance without the items for which {@code forbidden} holds. */
    static Optional<Solution> solve(Setup setup, long[] base, boolean[] activeMusts, boolean[] forbidden) {
        var solver = new Solver(setup, base, activeMusts);
        for (int i = 0; i < forbidden.length; i++) {
            if (forbidden[i]) {
                solver.caps[i] = 0;
            }
        }
        return solver.cheapest();
    }

    private Optional<Solution> cheapest() {
        putAsideDeadItems();
        search();
        return Optional.ofNullable(best);
    }

    /** Whether the row must hold at this point. */
    private boolean isActive(Setup.Row row) {
        return switch (row.role()) {
            case MUST -> activeMusts[row.requirement()];
            case NEED -> counts[row.owner()] > 0;
            case LIMIT -> true;
            case WISH -> false;
        };
    }

    private boolean canRaise(int item) {
        if (counts[item] >= caps[item]) {
            return false;
        }
        for (int other = 0; other < counts.length; other++) {
            if (counts[other] > 0 && setup.excludes(item, other)) {
                return false;
            }
        }
        return true;
    }

    /**
     * Puts aside items that can never be there because something they need is out of reach, and then items that need
     * those, until nothing changes: a must-have that only such items could meet is seen to fail at once.
     */
    private void putAsideDeadItems() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int r = 0; r < values.length; r++) {
                Setup.Row row = setup.rows().get(r);
                if (row.role() == Setup.Role.NEED && caps[row.owner()] > 0 && reach(r) < row.bound()) {
                    caps[row.owner()] = 0;
                    changed = true;
                }
            }
        }
    }

    /** The most the row can come to, what its helpers need left aside. */
    private long reach(int row) {
        long reach = values[row];
        long[] coefficient = setup.rows().get(row).coefficient();
        for (int i : setup.helpersOfRow(row)) {
            reach += coefficient[i] * (caps[i] - counts[i]);
        }
        return reach;
    }

    private void search() {
        int branchRow = -1;
        int fewestHelpers = Integer.MAX_VALUE;
        int[] shortRows = new int[values.length];
        double[] floors = new double[values.length];
        int shortCount = 0;
        for (int r = 0; r < values.length; r++) {
            Setup.Row row = setup.rows().get(r);
            long deficit = row.bound() - values[r];
            if (deficit <= 0 || !isActive(row)) {
                continue;
            }
            int helpers = 0;
            long reach = 0;
            double cheapest = Double.POSITIVE_INFINITY;
            for (int i : setup.helpersOfRow(r)) {
                if (canRaise(i)) {
                    helpers++;
                    long each = row.coefficient()[i];
                    reach += each * (caps[i] - counts[i]);
                    cheapest = Math.min(cheapest, priceOfReaching(i, each, deficit));
                }
            }
            if (reach < deficit) {
                return;
            }
            shortRows[shortCount] = r;
            floors[shortCount++] = cheapest;
            if (helpers < fewestHelpers) {
                fewestHelpers = helpers;
                branchRow = r;
            }
        }
        if (branchRow < 0) {
            record();
        } else if (best == null || cost + Math.floor(floor(shortRows, floors, shortCount)) <= best.cents()) {
            branch(branchRow);
        }
    }

    /**
     * A floor under what closing all short rows costs: dearest rows first, each row none of whose helpers helps one
     * counted before adds its own floor.
     */
    private double floor(int[] rows, double[] floors, int count) {
        long[] used = new long[setup.maskLength()];
        double sum = 0;
        for (int n = 0; n < count; n++) {
            int dearest = n;
            for (int k = n + 1; k < count; k++) {
                if (floors[k] > floors[dearest]) {
                    dearest = k;
                }
            }
            int row = rows[dearest];
            double floor = floors[dearest];
            rows[dearest] = rows[n];
            floors[dearest] = floors[n];
            if (setup.takeIfApart(row, used)) {
                sum += floor;
            }
        }
        return sum;
    }

    /** A floor under the price of closing the deficit with this item alone; mixing items cannot be cheaper a unit. */
    private double priceOfReaching(int item, long each, long deficit) {
        return setup.items().get(item).cents() * ((double) deficit / each);
    }

    private void branch(int row) {
        int[] helpers = setup.helpersOfRow(row);
        int[] capsBefore = new int[helpers.length];
        for (int h = 0; h < helpers.length; h++) {
            int item = helpers[h];
            capsBefore[h] = caps[item];
            if (canRaise(item)) {
                raise(item, 1);
                search();
                raise(item, -1);
                caps[item] = counts[item];
            }
        }
        for (int h = 0; h < helpers.length; h++) {
            caps[helpers[h]] = capsBefore[h];
        }
    }

    private void raise(int item, int by) {
        counts[item] += by;
        cost += by * setup.items().get(item).cents();
        for (int r : setup.rowsOfItem(item)) {
            values[r] += by * setup.rows().get(r).coefficient()[item];
        }
    }

    private void record() {
        int pieces = 0;
        int minutes = 0;
        for (int i = 0; i < counts.length; i++) {
            pieces += counts[i];
            minutes += counts[i] * setup.items().get(i).minutes();
        }
        var found = new Solution(counts.clone(), cost, pieces, minutes);
        if (best == null || found.beats(best)) {
            best = found;
        }
    }
}
