package fencerow.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Items and rows of one kind that have nothing to do with its others, whatever is known of a unit. Units that agree in
 * a section's rows have the same parts there, so most units need no split of their own. Confined to one thread.
 */
final class Section {
    private static final Comparator<Share> BY_FIRST_ROW = Comparator.comparingInt(share -> share.slice().rows()[0]);

    private final Split.Slice slice;
    private final Links links;
    private final long[] setupAsNumbers;
    private final boolean[] inside;
    private final Solved solved;
    private final Map<Key, List<Share>> known = new HashMap<>();

    /** What a unit has in a section's rows. */
    private record Key(long[] headroom, List<Problem.Piece> pieces) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && Arrays.equals(headroom, key.headroom) && pieces.equals(key.pieces);
        }

        @Override
        public int hashCode() {
            return 31 * Arrays.hashCode(headroom) + pieces.hashCode();
        }
    }

    private Section(Split.Slice slice, int rows, Solved solved) {
        this.slice = slice;
        Setup setup = slice.problem().setup();
        this.links = Links.of(setup.items().count(), setup.rows());
        this.setupAsNumbers = Problem.Signature.numbers(setup);
        this.inside = new boolean[rows];
        for (int row : slice.rows()) {
            inside[row] = true;
        }
        this.solved = solved;
    }

    /**
     * The sections of a kind.
     *
     * @param any any unit of it
     */
    static List<Section> of(Problem any, Links links, Solved solved) {
        return Split.of(any, links).stream()
                .map(slice -> new Section(slice, any.headroom().length, solved))
                .toList();
    }

    /** All parts of a unit's problem, in the order of their rows. */
    static List<Share> shares(List<Section> sections, Problem problem) {
        List<Share> all = new ArrayList<>();
        sections.forEach(section -> all.addAll(section.shares(problem)));
        all.sort(BY_FIRST_ROW);
        return all;
    }

    private List<Share> shares(Problem problem) {
        int[] rows = slice.rows();
        long[] headroom = new long[rows.length];
        for (int r = 0; r < rows.length; r++) {
            headroom[r] = problem.headroom()[rows[r]];
        }
        List<Problem.Piece> pieces = new ArrayList<>();
        for (Problem.Piece piece : problem.pieces()) {
            if (touches(piece)) {
                pieces.add(piece);
            }
        }
        return known.computeIfAbsent(new Key(headroom, pieces), this::found);
    }

    private boolean touches(Problem.Piece piece) {
        for (Sparse state : piece.states()) {
            for (int row : state.places()) {
                if (inside[row]) {
                    return true;
                }
            }
        }
        return false;
    }

    private List<Share> found(Key key) {
        List<Problem.Piece> pieces = new ArrayList<>();
        for (Problem.Piece piece : key.pieces()) {
            List<Sparse> states = piece.states().stream()
                    .map(state -> Split.within(slice.rows(), state))
                    .toList();
            pieces.add(new Problem.Piece(piece.feature(), states));
        }
        var problem = new Problem(slice.problem().setup(), key.headroom(), pieces);
        return solved.shares(problem, problem.signature(setupAsNumbers), links).stream()
                .map(share -> share.in(slice))
                .toList();
    }
}
