package fencerow.match;

import fencerow.terms.PriceRange;
import java.util.Arrays;
import java.util.Optional;
import java.util.function.IntFunction;
import org.jspecify.annotations.Nullable;

/**
 * Finds the cheapest counts of items with which every active row holds, exactly.
 *
 * <p>Raise-only search: counts start at nothing; while some active row is short, any completion must raise one of that
 * row's helpers, so those are the branches; after a branch its item is capped where it stood, so no combination is
 * tried twice. A row out of reach, or a price that cannot beat the best found, ends a branch. Ties go to fewer pieces,
 * then less fitting time, then the earlier items. Immutable: each instance is searched by itself.
 */
final class Solver {
    private static final double[] NO_FLOORS = {};

    private final Setup.Items items;
    private final Rows rows;

    /** Counts for each item with what they come to. */
    record Solution(int[] counts, long cents, int pieces, int minutes) {
        /** None of so many items. */
        static Solution nothing(int items) {
            return new Solution(new int[items], 0, 0, 0);
        }

        /** The same with counts of some more items, given their places. */
        Solution with(Solution other, int[] places) {
            int[] both = counts.clone();
            for (int i = 0; i < places.length; i++) {
                both[places[i]] += other.counts[i];
            }
            return new Solution(both, cents + other.cents, pieces + other.pieces, minutes + other.minutes);
        }

        /** What it costs, given the price of one of each item. */
        PriceRange price(IntFunction<PriceRange> of) {
            PriceRange price = PriceRange.ZERO;
            for (int i = 0; i < counts.length; i++) {
                price = counts[i] == 0 ? price : price.plus(of.apply(i).times(counts[i]));
            }
            return price;
        }

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

    /** Gets ready to solve instances of the setup. */
    Solver(Setup setup) {
        this.items = setup.items();
        this.rows = new Rows(setup);
    }

    /** How many items the setup has. */
    int items() {
        return items.count();
    }

    /** The setup's rows. */
    Rows rows() {
        return rows;
    }

    /**
     * The cheapest counts; empty if no counts will do.
     *
     * @param headroom  of each row before anything is fitted
     * @param asked     for each must-have, whether it is asked for
     * @param forbidden for each item, whether it may not be used
     */
    Optional<Solution> cheapest(long[] headroom, boolean[] asked, boolean[] forbidden) {
        return cheapest(headroom, asked, forbidden, Optional.empty());
    }

    /** The same, given counts that will do. */
    Optional<Solution> cheapest(long[] headroom, boolean[] asked, boolean[] forbidden, Optional<Solution> known) {
        return new Search(headroom, asked, forbidden, known, false).best();
    }

    /** Some counts that will do; empty if none will. */
    Optional<Solution> findAny(long[] headroom, boolean[] asked) {
        return new Search(headroom, asked, new boolean[items.count()], Optional.empty(), true).best();
    }

    /** One instance being searched. */
    private final class Search {
        private final boolean[] asked;
        private final boolean anyWillDo;
        private final int[] counts;
        private final int[] caps;
        private final long[] values;
        private long cost;
        private @Nullable Solution best;
        private long @Nullable [][] helpersAsBits;

        private Search(
                long[] headroom,
                boolean[] asked,
                boolean[] forbidden,
                Optional<Solution> known,
                boolean anyWillDo) {
            this.best = known.orElse(null);
            this.asked = asked;
            this.anyWillDo = anyWillDo;
            this.counts = new int[items.count()];
            this.caps = items.most().clone();
            for (int i = 0; i < caps.length; i++) {
                caps[i] = forbidden[i] ? 0 : caps[i];
            }
            this.values = headroom.clone();
        }

        private Optional<Solution> best() {
            putAsideDeadItems();
            search();
            return Optional.ofNullable(best);
        }

        private boolean canRaise(int item) {
            if (counts[item] >= caps[item]) {
                return false;
            }
            for (int other : items.excludes()[item]) {
                if (counts[other] > 0) {
                    return false;
                }
            }
            return true;
        }

        /**
         * Puts aside items that can never be there because something they need is out of reach, and then items that
         * need those, until nothing changes: a must-have that only such items could meet is seen to fail at once.
         */
        private void putAsideDeadItems() {
            boolean changed = true;
            while (changed) {
                changed = false;
                for (int r = 0; r < rows.count(); r++) {
                    if (rows.isNeed(r) && values[r] < 0 && caps[rows.whose(r)] > 0 && reach(r) < 0) {
                        caps[rows.whose(r)] = 0;
                        changed = true;
                    }
                }
            }
        }

        /** The most the row can come to, what its helpers need left aside. */
        private long reach(int row) {
            long reach = values[row];
            int[] helpers = rows.helpers(row);
            long[] gives = rows.gives(row);
            for (int h = 0; h < helpers.length; h++) {
                reach += gives[h] * caps[helpers[h]];
            }
            return reach;
        }

        private void search() {
            int branchRow = -1;
            int fewestHelpers = Integer.MAX_VALUE;
            boolean bounded = best != null;
            double[] floors = bounded ? new double[rows.count()] : NO_FLOORS;
            for (int r = 0; r < rows.count(); r++) {
                if (values[r] >= 0 || !rows.isActive(r, asked, counts)) {
                    continue;
                }
                long deficit = -values[r];
                int able = 0;
                long reach = 0;
                double cheapest = Double.POSITIVE_INFINITY;
                int[] helpers = rows.helpers(r);
                long[] gives = rows.gives(r);
                for (int h = 0; h < helpers.length; h++) {
                    int item = helpers[h];
                    if (canRaise(item)) {
                        able++;
                        reach += gives[h] * (caps[item] - counts[item]);
                        if (bounded) {
                            cheapest = Math.min(cheapest, items.cents()[item] * ((double) deficit / gives[h]));
                        }
                    }
                }
                if (reach < deficit) {
                    return;
                }
                if (bounded) {
                    floors[r] = cheapest;
                }
                if (able < fewestHelpers) {
                    fewestHelpers = able;
                    branchRow = r;
                }
            }
            if (branchRow < 0) {
                record();
            } else if (best == null || cost + Math.floor(floor(floors)) <= best.cents()) {
                branch(branchRow);
            }
        }

        /**
         * A floor under what closing all short rows costs, given one for each row by itself: dearest rows first, each
         * row none of whose helpers helps one counted before adds its own. For one row: closing it with its cheapest
         * helper alone; mixing helpers cannot be cheaper.
         */
        private double floor(double[] floors) {
            long[][] bits = helpersAsBits;
            if (bits == null) {
                bits = rows.helpersAsBits();
                helpersAsBits = bits;
            }
            long[] used = new long[bits[0].length];
            double sum = 0;
            while (true) {
                int dearest = 0;
                for (int r = 1; r < rows.count(); r++) {
                    dearest = floors[r] > floors[dearest] ? r : dearest;
                }
                if (floors[dearest] <= 0) {
                    return sum;
                }
                if (takeIfApart(bits[dearest], used)) {
                    sum += floors[dearest];
                }
                floors[dearest] = 0;
            }
        }

        /** Adds the helpers to the set if none of them is in it, and says whether it did. */
        private boolean takeIfApart(long[] some, long[] used) {
            for (int w = 0; w < used.length; w++) {
                if ((used[w] & some[w]) != 0) {
                    return false;
                }
            }
            for (int w = 0; w < used.length; w++) {
                used[w] |= some[w];
            }
            return true;
        }

        private void branch(int row) {
            int[] able = rows.helpers(row);
            int[] capsBefore = new int[able.length];
            for (int h = 0; h < able.length; h++) {
                int item = able[h];
                capsBefore[h] = caps[item];
                if (canRaise(item) && !(anyWillDo && best != null)) {
                    raise(item, 1);
                    search();
                    raise(item, -1);
                    caps[item] = counts[item];
                }
            }
            for (int h = 0; h < able.length; h++) {
                caps[able[h]] = capsBefore[h];
            }
        }

        private void raise(int item, int by) {
            counts[item] += by;
            cost += by * items.cents()[item];
            rows.add(values, item, by);
        }

        private void record() {
            int pieces = 0;
            int minutes = 0;
            for (int i = 0; i < counts.length; i++) {
                pieces += counts[i];
                minutes += counts[i] * items.minutes()[i];
            }
            var found = new Solution(counts.clone(), cost, pieces, minutes);
            if (best == null || found.beats(best)) {
                best = found;
            }
        }
    }
}
