package fencerow.match;

import java.util.Arrays;
import java.util.List;

/**
 * One unit for one shopper, or an independent part of that.
 *
 * @param setup    items and rows
 * @param headroom for each row, what the unit has by itself beyond what is asked, each unverified piece at its worst in
 *                 that row
 * @param pieces   unverified pieces, with what they may add to that
 */
record Problem(Setup setup, long[] headroom, List<Piece> pieces) {
    /**
     * A feature nobody has checked.
     *
     * @param feature its place in the catalogue
     * @param states  for each possible state what it adds to each row beyond the worst it can come to there
     */
    record Piece(int feature, List<Sparse> states) {}

    /** Everything that decides the answer, as numbers: problems with equal signatures have equal answers. */
    Signature signature() {
        return new Signature(this);
    }

    /** Numbers compared one by one. */
    static final class Signature {
        private final long[] numbers;
        private final int hash;
        private int size;

        private Signature(Problem problem) {
            Setup setup = problem.setup();
            Setup.Items items = setup.items();
            long[] all = new long[16 * (2 + items.count() + setup.rows().size())];
            all = add(all, items.count());
            for (int i = 0; i < items.count(); i++) {
                all = add(all, items.cents()[i], items.most()[i], items.minutes()[i], items.excludes()[i].length);
                for (int other : items.excludes()[i]) {
                    all = add(all, other);
                }
            }
            for (int r = 0; r < problem.headroom().length; r++) {
                Setup.Row row = setup.rows().get(r);
                all = add(all, problem.headroom()[r], row.role().ordinal(), row.owner());
                all = add(all, row.change());
            }
            for (Piece piece : problem.pieces()) {
                all = add(all, piece.states().size());
                for (Sparse state : piece.states()) {
                    all = add(all, state);
                }
            }
            this.numbers = Arrays.copyOf(all, size);
            this.hash = Arrays.hashCode(numbers);
        }

        private long[] add(long[] to, Sparse sparse) {
            long[] all = add(to, sparse.size());
            for (int k = 0; k < sparse.size(); k++) {
                all = add(all, sparse.places()[k], sparse.amounts()[k]);
            }
            return all;
        }

        private long[] add(long[] to, long... some) {
            long[] all = to.length < size + some.length ? Arrays.copyOf(to, 2 * (size + some.length)) : to;
            System.arraycopy(some, 0, all, size, some.length);
            size += some.length;
            return all;
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Signature signature && Arrays.equals(numbers, signature.numbers);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }
}
