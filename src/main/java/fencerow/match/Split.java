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
    private final Problem problem;
    private final Setup setup;
    private final Relevance relevance;
    private final int[] groupOf;
    private final int[] local;

    /**
     * One part of a problem.
     *
     * @param items   for each of its items the place in the whole
     * @param rows    for each of its rows the place in the whole, rising
     * @param musts   for each of its must-haves the place in the whole, rising
     * @param problem the part
     */
    record Slice(int[] items, int[] rows, int[] musts, Problem problem) {
        /** The same seen from a larger problem that has the present one as a slice. */
        Slice in(Slice larger) {
            return new Slice(
                    places(items, larger.items),
                    places(rows, larger.rows),
                    places(musts, larger.musts),
                    problem);
        }

        private static int[] places(int[] own, int[] larger) {
            int[] places = new int[own.length];
            for (int i = 0; i < own.length; i++) {
                places[i] = larger[own[i]];
            }
            return places;
        }
    }

    private Split(Problem problem, Relevance relevance) {
        this.problem = problem;
        this.setup = problem.setup();
        this.relevance = relevance;
        this.groupOf = new int[nodeOfPiece(problem.pieces().size())];
        this.local = new int[Math.max(setup.items().count(), setup.rows().size())];
    }

    /** The parts, each with at least one must-have that does not hold or could be undone. */
    static List<Slice> of(Problem problem) {
        Links links = Links.of(problem.setup().items().count(), problem.setup().rows());
        return of(problem, Relevance.of(problem, links));
    }

    /** The same, given what can matter to the problem. */
    static List<Slice> of(Problem problem, Relevance relevance) {
        return new Split(problem, relevance).slices();
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
        for (int p = 0; p < problem.pieces().size(); p++) {
            List<Sparse> states = problem.pieces().get(p).states();
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
        int[] musts = Arrays.stream(rows)
                .mapToObj(setup.rows()::get)
                .filter(row -> row.role() == Setup.Role.MUST)
                .mapToInt(Setup.Row::whose)
                .distinct()
                .toArray();
        List<Setup.Row> sliced = new ArrayList<>(rows.length);
        long[] headroom = new long[rows.length];
        for (int r = 0; r < rows.length; r++) {
            Setup.Row row = setup.rows().get(rows[r]);
            sliced.add(new Setup.Row(row.role(), whose(row, musts), within(group, row.change())));
            headroom[r] = problem.headroom()[rows[r]];
        }
        var part = new Problem(new Setup(goods(items), sliced), headroom, pieces(group, rows));
        return new Slice(items, rows, musts, part);
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

    private List<Problem.Piece> pieces(int group, int[] rows) {
        List<Problem.Piece> pieces = new ArrayList<>();
        for (int p = 0; p < problem.pieces().size(); p++) {
            if (groupOf[nodeOfPiece(p)] == group) {
                Problem.Piece piece = problem.pieces().get(p);
                List<Sparse> states = new ArrayList<>();
                piece.states().forEach(state -> states.add(state.within(rows)));
                pieces.add(new Problem.Piece(piece.feature(), states));
            }
        }
        return pieces;
    }
}
