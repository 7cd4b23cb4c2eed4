package fencerow.match;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;

/** A setup's rows laid out for searching: who helps each, cheapest first, and what each item changes. Immutable. */
final class Rows {
    private final Setup.Items items;
    private final int count;
    private final int musts;
    private final Setup.Role[] roles;
    private final int[] whose;
    private final int[][] helpers;
    private final long[][] gives;
    private final Sparse[] changesOf;

    /** Lays out the rows of a setup. */
    Rows(Setup setup) {
        this.items = setup.items();
        this.count = setup.rows().size();
        this.roles = new Setup.Role[count];
        this.whose = new int[count];
        this.helpers = new int[count][];
        this.gives = new long[count][];
        int mustsSeen = 0;
        for (int r = 0; r < count; r++) {
            Setup.Row row = setup.rows().get(r);
            roles[r] = row.role();
            whose[r] = row.whose();
            mustsSeen = roles[r] == Setup.Role.MUST ? Math.max(mustsSeen, whose[r] + 1) : mustsSeen;
            cheapestFirst(r, row.change());
        }
        this.musts = mustsSeen;
        this.changesOf = setup.changesByItem();
    }

    /** The items that help, by insertion: there are few. */
    private void cheapestFirst(int row, Sparse change) {
        int[] sorted = new int[change.size()];
        long[] amounts = new long[sorted.length];
        int size = 0;
        for (int k = 0; k < sorted.length; k++) {
            if (change.amounts()[k] > 0) {
                int item = change.places()[k];
                int at = size++;
                while (at > 0 && items.cents()[sorted[at - 1]] > items.cents()[item]) {
                    sorted[at] = sorted[at - 1];
                    amounts[at] = amounts[at - 1];
                    at--;
                }
                sorted[at] = item;
                amounts[at] = change.amounts()[k];
            }
        }
        helpers[row] = Arrays.copyOf(sorted, size);
        gives[row] = amounts;
    }

    /** How many must-haves the setup has. */
    int musts() {
        return musts;
    }

    /** How many there are. */
    int count() {
        return count;
    }

    /** Whether the row is some item's need. */
    boolean isNeed(int row) {
        return roles[row] == Setup.Role.NEED;
    }

    /** The must-have that the row belongs to, or the item whose need it is. */
    int whose(int row) {
        return whose[row];
    }

    /** The items that help the row, cheapest first. */
    int[] helpers(int row) {
        return helpers[row];
    }

    /** What one piece of each of {@link #helpers} gives to the row; there may be more numbers than helpers. */
    long[] gives(int row) {
        return gives[row];
    }

    /** For each row its helpers as a set of bits. */
    long[][] helpersAsBits() {
        long[][] bits = new long[count][(items.count() + Long.SIZE - 1) / Long.SIZE];
        for (int r = 0; r < count; r++) {
            for (int item : helpers[r]) {
                bits[r][item / Long.SIZE] |= 1L << (item % Long.SIZE);
            }
        }
        return bits;
    }

    /** Whether the row has to hold, given the must-haves asked for and how many of each item there are. */
    boolean isActive(int row, boolean[] asked, int[] counts) {
        Setup.Role role = roles[row];
        return role == Setup.Role.LIMIT
                || role == Setup.Role.MUST && asked[whose[row]]
                || role == Setup.Role.NEED && counts[whose[row]] > 0;
    }

    /** Adds to each row what so many of an item change there. */
    void add(long[] values, int item, int times) {
        Sparse change = changesOf[item];
        for (int k = 0; k < change.size(); k++) {
            values[change.places()[k]] += times * change.amounts()[k];
        }
    }

    /** Whether the counts, none above what there can be, make every active row hold. */
    boolean hold(long[] headroom, boolean[] asked, int[] counts) {
        long[] values = headroom.clone();
        for (int i = 0; i < counts.length; i++) {
            if (counts[i] > 0) {
                add(values, i, counts[i]);
            }
        }
        for (int r = 0; r < count; r++) {
            if (values[r] < 0 && isActive(r, asked, counts)) {
                return false;
            }
        }
        return true;
    }

    /**
     * The cheapest at the outcome where it costs most; empty where some outcome has none.
     *
     * @param outcomes the headroom of each row at each of them
     * @param cheapest finds the cheapest at one
     */
    Optional<Solver.Solution> dearest(
            List<long[]> outcomes, boolean[] asked, Function<long[], Optional<Solver.Solution>> cheapest) {
        Optional<Solver.Solution> dearest = Optional.empty();
        for (long[] outcome : outcomes) {
            if (dearest.isPresent() && hold(outcome, asked, dearest.get().counts())) {
                continue; // it costs no more here
            }
            Optional<Solver.Solution> found = cheapest.apply(outcome);
            if (found.isEmpty()) {
                return found;
            }
            if (dearest.isEmpty() || found.get().cents() > dearest.get().cents()) {
                dearest = found;
            }
        }
        return dearest;
    }
}
