package fencerow.match;

import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.PriceRange;
import fencerow.terms.Relation;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * What units of one kind have in common for one shopper, as numbers: choose counts of items so that every active row
 * holds, at the least price. A row holds when {@code base + sum of coefficient x count >= bound}; at-most demands are
 * turned round.
 */
final class Setup {
    private final List<Candidate> items;
    private final List<Row> rows;
    private final boolean[][] excludes;
    private final int[][] helpersOfRow;
    private final long[][] helperMask;
    private final int[][] rowsOfItem;

    /**
     * An item that can be had for these units.
     *
     * @param cents middle price of one
     */
    record Candidate(Item item, int max, PriceRange price, long cents, int minutes) {}

    /** What a row stands for. */
    enum Role {
        /** A must-have: active while it is asked for. */
        MUST,
        /** A wish: never active, only read. */
        WISH,
        /** A need of an item: active while that item is there. */
        NEED,
        /** A limit of the model or of a shared resource: always active. */
        LIMIT
    }

    /**
     * One condition.
     *
     * @param role        what it stands for
     * @param owner       the item whose need it is, else -1
     * @param requirement the requirement's place in the needs, else -1
     * @param of          the capability
     * @param relation    as asked
     * @param dimension   of the capability
     * @param coefficient for each item what one piece adds
     * @param bound       what must be reached
     */
    record Row(
            Role role,
            int owner,
            int requirement,
            CapabilityId of,
            Relation relation,
            Dimension dimension,
            long[] coefficient,
            long bound) {
        /** The bound as the demand stated it. */
        Amount wanted() {
            return amount(bound);
        }

        /** A row value as an amount of the capability. */
        Amount amount(long value) {
            return Amount.ofSteps(dimension, relation == Relation.AT_MOST ? -value : value);
        }
    }

    /**
     * Takes the conditions over the items.
     *
     * @param excludes for each pair of items, whether they exclude each other; symmetric
     */
    Setup(List<Candidate> items, List<Row> rows, boolean[][] excludes) {
        this.items = List.copyOf(items);
        this.rows = List.copyOf(rows);
        this.excludes = excludes;
        this.helpersOfRow = new int[rows.size()][];
        for (int r = 0; r < rows.size(); r++) {
            long[] coefficient = rows.get(r).coefficient();
            helpersOfRow[r] = IntStream.range(0, items.size())
                    .filter(i -> coefficient[i] > 0)
                    .boxed()
                    .sorted(Comparator.comparingLong(i -> items.get(i).cents()))
                    .mapToInt(Integer::intValue)
                    .toArray();
        }
        this.helperMask = new long[rows.size()][maskLength()];
        for (int r = 0; r < rows.size(); r++) {
            for (int i : helpersOfRow[r]) {
                helperMask[r][i / Long.SIZE] |= 1L << (i % Long.SIZE);
            }
        }
        this.rowsOfItem = new int[items.size()][];
        for (int i = 0; i < items.size(); i++) {
            int item = i;
            rowsOfItem[i] = IntStream.range(0, rows.size())
                    .filter(r -> rows.get(r).coefficient()[item] != 0)
                    .toArray();
        }
    }

    List<Candidate> items() {
        return items;
    }

    List<Row> rows() {
        return rows;
    }

    /** Whether the two items exclude each other. */
    boolean excludes(int a, int b) {
        return excludes[a][b];
    }

    /** The items that raise the row, cheapest first. */
    int[] helpersOfRow(int row) {
        return helpersOfRow[row];
    }

    /** The length of a set of items as {@link #takeIfApart} keeps it. */
    int maskLength() {
        return (items.size() + Long.SIZE - 1) / Long.SIZE;
    }

    /** Adds the row's helpers to the set if none of them is in it, and says whether it did. */
    boolean takeIfApart(int row, long[] used) {
        long[] mask = helperMask[row];
        for (int w = 0; w < used.length; w++) {
            if ((used[w] & mask[w]) != 0) {
                return false;
            }
        }
        for (int w = 0; w < used.length; w++) {
            used[w] |= mask[w];
        }
        return true;
    }

    /** The rows that the item changes. */
    int[] rowsOfItem(int item) {
        return rowsOfItem[item];
    }
}
