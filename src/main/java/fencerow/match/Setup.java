package fencerow.match;

import java.util.List;

/**
 * Items and conditions as numbers: choose counts of items so that every active row holds, at the least price. A row
 * holds when its headroom is not negative: what a unit has beyond what is asked, plus what each item changes times its
 * count. At-most demands are turned round.
 */
record Setup(Items items, List<Row> rows) {
    /** What a row stands for. */
    enum Role {
        /** A must-have in one working state: active while it is asked for. */
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
     * @param whose  the must-have that it belongs to, or the item whose need it is; else -1
     * @param change for each item what one piece of it does to the headroom
     */
    record Row(Role role, int whose, Sparse change) {
        /** Whether it is some item's need. */
        boolean isNeed() {
            return role == Role.NEED;
        }
    }

    /**
     * What is for sale.
     *
     * @param cents    middle price of one
     * @param most     how many there can be; 0 where it cannot be had
     * @param minutes  fitting time of one
     * @param excludes for each item those that cannot be there with it; symmetric
     */
    record Items(long[] cents, int[] most, int[] minutes, int[][] excludes) {
        int count() {
            return cents.length;
        }
    }

    /** The rows' changes seen from the items: for each item what one piece of it does to each row. */
    Sparse[] changesByItem() {
        int[] sizes = new int[items.count()];
        for (Setup.Row row : rows) {
            for (int item : row.change().places()) {
                sizes[item]++;
            }
        }
        Sparse[] changes = new Sparse[sizes.length];
        for (int i = 0; i < sizes.length; i++) {
            changes[i] = new Sparse(new int[sizes[i]], new long[sizes[i]]);
            sizes[i] = 0;
        }
        for (int r = 0; r < rows.size(); r++) {
            Sparse change = rows.get(r).change();
            for (int k = 0; k < change.size(); k++) {
                int item = change.places()[k];
                changes[item].places()[sizes[item]] = r;
                changes[item].amounts()[sizes[item]++] = change.amounts()[k];
            }
        }
        return changes;
    }
}
