package fencerow.match;

/** Things put together into groups, one pair at a time: a union-find with path halving. */
final class Groups {
    private final int[] parent;

    Groups(int things) {
        this.parent = new int[things];
        for (int i = 0; i < things; i++) {
            parent[i] = i;
        }
    }

    /** Puts the groups of both things together. */
    void join(int a, int b) {
        parent[find(a)] = find(b);
    }

    /** The same number for all things of one group. */
    int find(int thing) {
        int at = thing;
        while (parent[at] != at) {
            parent[at] = parent[parent[at]];
            at = parent[at];
        }
        return at;
    }
}
