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
        return new Signature(Signature.numbers(setup.items()), Signature.numbers(setup.rows()), this);
    }

    /** Numbers compared one by one. */
    static final class Signature {
        private final long[] ofItems;
        private final long[] ofRows;
        private final long[] own;
        private final int hash;

        /**
         * Puts together what is known of a problem's setup and the rest of it.
         *
         * @param ofItems what {@link #numbers(Setup.Items)} gives for it
         * @param ofRows  what {@link #numbers(List)} gives for it
         */
        Signature(long[] ofItems, long[] ofRows, Problem problem) {
            this(ofItems, ofRows, own(problem));
        }

        /** The same with other numbers in place of the rest. */
        Signature(long[] ofItems, long[] ofRows, long[] own) {
            this.ofItems = ofItems;
            this.ofRows = ofRows;
            this.own = own;
            this.hash = 31 * (31 * Arrays.hashCode(ofRows) + Arrays.hashCode(ofItems)) + Arrays.hashCode(own);
        }

        private static int number(Setup.Role role) {
            return switch (role) {
                case MUST -> 0;
                case WISH -> 1;
                case NEED -> 2;
                case LIMIT -> 3;
            };
        }

        /** Items as numbers. */
        static long[] numbers(Setup.Items items) {
            var all = new Numbers(6 * items.count());
            for (int i = 0; i < items.count(); i++) {
                all.add(items.cents()[i]);
                all.add(items.most()[i]);
                all.add(items.minutes()[i]);
                all.add(items.excludes()[i].length);
                for (int other : items.excludes()[i]) {
                    all.add(other);
                }
            }
            return all.toArray();
        }

        /** Rows as numbers. */
        static long[] numbers(List<Setup.Row> rows) {
            var all = new Numbers(16 * rows.size());
            for (Setup.Row row : rows) {
                all.add(number(row.role()));
                all.add(row.whose());
                all.add(row.change());
            }
            return all.toArray();
        }

        private static long[] own(Problem problem) {
            if (problem.pieces().isEmpty()) {
                return problem.headroom();
            }
            var all = new Numbers(problem.headroom().length + 8 * problem.pieces().size());
            for (long each : problem.headroom()) {
                all.add(each);
            }
            for (int p = 0; p < problem.pieces().size(); p++) {
                List<Sparse> states = problem.pieces().get(p).states();
                all.add(states.size());
                for (int s = 0; s < states.size(); s++) {
                    all.add(states.get(s));
                }
            }
            return all.toArray();
        }

        @Override
        public boolean equals(Object other) {
            return other == this
                    || other instanceof Signature signature
                    && hash == signature.hash
                    && Arrays.equals(own, signature.own)
                    && Arrays.equals(ofItems, signature.ofItems)
                    && Arrays.equals(ofRows, signature.ofRows);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** A row of numbers that grows. */
    static final class Numbers {
        private long[] all;
        private int size;

        Numbers(int expected) {
            this.all = new long[expected];
        }

        void add(long number) {
            if (size == all.length) {
                all = Arrays.copyOf(all, 2 * size);
            }
            all[size++] = number;
        }

        void add(Sparse sparse) {
            add(sparse.size());
            for (int k = 0; k < sparse.size(); k++) {
                add(sparse.places()[k]);
                add(sparse.amounts()[k]);
            }
        }

        long[] toArray() {
            return Arrays.copyOf(all, size);
        }
    }
}
