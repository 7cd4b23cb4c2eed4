package fencerow.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * Cuts a problem into parts that have nothing to do with each other, and leaves out what cannot matter. The cheapest
 * answer to the problem is the cheapest answers to its parts put together. Confined to one call.
 */
final class Split {
    private final Setup setup;
    private final List<Problem.Piece> pieces;
    private final Relevance relevance;
    private final int[] groupOf;
    private final int[] local;

    /**
     * Where a part of a problem stands in the whole.
     *
     * @param items for each of its items the place in the whole
     * @param rows  for each of its rows the place in the whole, rising
     * @param musts for each of its must-haves the place in the whole, rising
     * @param setup of the part
     */
    record Slice(int[] items, int[] rows, int[] musts, Setup setup) {
        /** The same seen from a larger problem that has the present one as a slice. */
        Slice in(Slice larger) {
            return new Slice(
                    places(items, larger.items), places(rows, larger.rows), places(musts, larger.musts), setup);
        }

        private static int[] places(int[] own, int[] larger) {
            int[] places = new int[own.length];
            for (int i = 0; i < own.length; i++) {
                places[i] = larger[own[i]];
            }
            return places;
        }
    }

    /**
     * One part of a problem.
     *
     * @param slice   where it stands
     * @param problem the part
     */
    record Cut(Slice slice, Problem problem) {}

    private Split(Setup setup, List<Problem.Piece> pieces, Relevance relevance) {
        this.setup = setup;
        this.pieces = pieces;
        this.relevance = relevance;
        this.groupOf = new int[nodeOfPiece(pieces.size())];
        this.local = new int[Math.max(setup.items().count(), setup.rows().size())];
    }

    /** The parts, each with at least one must-have that does not hold or could be undone. */
    static List<Cut> of(Problem problem) {
        Links links = Links.of(problem.setup().items().count(), problem.setup().rows());
        var split = new Split(problem.setup(), problem.pieces(), Relevance.of(problem, links));
        List<Cut> cuts = new ArrayList<>();
        for (Slice slice : split.slices()) {
            cuts.add(new Cut(slice, split.part(problem, slice)));
        }
        return cuts;
    }

    /** Where the parts stand, given what can matter to problems of the setup. */
    static List<Slice> of(Setup setup, List<Problem.Piece> pieces, Relevance relevance) {
        return new Split(setup, pieces, relevance).slices();
    }

    private List<Slice> slices() {
        int[] items = places(setup.items().count(), relevance::isUseful);
        int[] rows = places(setup.rows().size(), relevance::isRelevant);
        if (rows.length == 0) {
            return List.of();
        }
        Groups groups = joined(items, rows);
        for (int node = 0; node < groupOf.length; node++) {
            groupOf[node] = groups.find(node);
        }
        List<Slice> slices = new ArrayList<>();
        boolean[] done = new boolean[groupOf.length];
        for (int row : rows) {
            int group = groupOf[nodeOfRow(row)];
            if (!done[group]) {
                done[group] = true;
                slices.add(slice(group, inGroup(group, items, 0), inGroup(group, rows, nodeOfRow(0))));
            }
        }
        return slices;
    }

    private int[] inGroup(int group, int[] places, int firstNode) {
        int[] in = new int[places.length];
        int size = 0;
        for (int place : places) {
            if (groupOf[firstNode + place] == group) {
                in[size++] = place;
            }
        }
        return Arrays.copyOf(in, size);
    }

    private int nodeOfRow(int row) {
        return setup.items().count() + row;
    }

    private int nodeOfPiece(int piece) {
        return setup.items().count() + setup.rows().size() + piece;
    }

    private static int[] places(int count, IntPredicate holds) {
        int[] places = new int[count];
        int size = 0;
        for (int i = 0; i < count; i++) {
            if (holds.test(i)) {
                places[size++] = i;
            }
        }
        return Arrays.copyOf(places, size);
    }

    /** What nothing can make hold stays by itself; any other row goes with all that decides about it. */
    private Groups joined(int[] items, int[] rows) {
        var groups = new Groups(groupOf.length);
        for (int r = 0; r < rows.length; r++) {
            if (relevance.isOpen(rows[r])) {
                joinItems(groups, rows[r]);
            }
            if (r > 0 && isOfSameMust(setup.rows().get(rows[r - 1]), setup.rows().get(rows[r]))) {
                groups.join(nodeOfRow(rows[r - 1]), nodeOfRow(rows[r]));
            }
        }
        for (int item : items) {
            for (int other : setup.items().excludes()[item]) {
                if (relevance.isUseful(other)) {
                    groups.join(item, other);
                }
            }
        }
        for (int p = 0; p < pieces.size(); p++) {
            List<Sparse> states = pieces.get(p).states();
            for (int s = 0; s < states.size(); s++) {
                joinPiece(groups, p, states.get(s));
            }
        }
        return groups;
    }

    /** The rows of one must-have follow each other. */
    private static boolean isOfSameMust(Setup.Row one, Setup.Row other) {
        return one.role() == Setup.Role.MUST && other.role() == Setup.Role.MUST && one.whose() == other.whose();
    }

    private void joinPiece(Groups groups, int piece, Sparse state) {
        for (int row : state.places()) {
            if (relevance.isOpen(row)) {
                groups.join(nodeOfRow(row), nodeOfPiece(piece));
            }
        }
    }

    private void joinItems(Groups groups, int row) {
        Setup.Row joined = setup.rows().get(row);
        if (joined.isNeed()) {
            groups.join(nodeOfRow(row), joined.whose());
        }
        for (int item : joined.change().places()) {
            if (relevance.isUseful(item)) {
                groups.join(nodeOfRow(row), item);
            }
        }
    }

    private Slice slice(int group, int[] items, int[] rows) {
        for (int i = 0; i < items.length; i++) {
            local[items[i]] = i;
        }
        int[] musts = mustsOf(rows);
        List<Setup.Row> sliced = new ArrayList<>(rows.length);
        for (int place : rows) {
            Setup.Row row = setup.rows().get(place);
            sliced.add(new Setup.Row(row.role(), whose(row, musts), within(group, row.change())));
        }
        return new Slice(items, rows, musts, new Setup(goods(items), sliced));
    }

    private int[] mustsOf(int[] rows) {
        int[] musts = new int[rows.length];
        int size = 0;
        for (int place : rows) {
            Setup.Row row = setup.rows().get(place);
            if (row.role() == Setup.Role.MUST && (size == 0 || musts[size - 1] != row.whose())) {
                musts[size++] = row.whose();
            }
        }
        return Arrays.copyOf(musts, size);
    }

    private int whose(Setup.Row row, int[] musts) {
        return switch (row.role()) {
            case NEED -> local[row.whose()];
            case MUST -> Arrays.binarySearch(musts, row.whose());
            case LIMIT, WISH -> -1;
        };
    }

    private Sparse within(int group, Sparse change) {
        int[] places = new int[change.size()];
        long[] amounts = new long[change.size()];
        int size = 0;
        for (int k = 0; k < places.length; k++) {
            int item = change.places()[k];
            if (relevance.isUseful(item) && groupOf[item] == group) {
                places[size] = local[item];
                amounts[size++] = change.amounts()[k];
            }
        }
        return new Sparse(Arrays.copyOf(places, size), Arrays.copyOf(amounts, size));
    }

    private Setup.Items goods(int[] items) {
        Setup.Items all = setup.items();
        long[] cents = new long[items.length];
        int[] most = new int[items.length];
        int[] minutes = new int[items.length];
        int[][] excludes = new int[items.length][];
        for (int i = 0; i < items.length; i++) {
            cents[i] = all.cents()[items[i]];
            most[i] = all.most()[items[i]];
            minutes[i] = all.minutes()[items[i]];
            excludes[i] = usefulOnly(all.excludes()[items[i]]);
        }
        return new Setup.Items(cents, most, minutes, excludes);
    }

    private int[] usefulOnly(int[] items) {
        int[] useful = new int[items.length];
        int size = 0;
        for (int item : items) {
            if (relevance.isUseful(item)) {
                useful[size++] = local[item];
            }
        }
        return Arrays.copyOf(useful, size);
    }

    private Problem part(Problem whole, Slice slice) {
        int[] rows = slice.rows();
        long[] headroom = new long[rows.length];
        for (int r = 0; r < rows.length; r++) {
            headroom[r] = whole.headroom()[rows[r]];
        }
        int group = groupOf[nodeOfRow(rows[0])];
        List<Problem.Piece> inside = new ArrayList<>();
        for (int p = 0; p < pieces.size(); p++) {
            if (groupOf[nodeOfPiece(p)] == group) {
                List<Sparse> states = new ArrayList<>();
                pieces.get(p).states().forEach(state -> states.add(state.within(rows)));
                inside.add(new Problem.Piece(pieces.get(p).feature(), states));
            }
        }
        return new Problem(slice.setup(), headroom, inside);
    }
}
