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
        return signature(Signature.numbers(setup));
    }

    /**
     * The same.
     *
     * @param ofSetup what {@link Signature#numbers} gives for its setup
     */
    Signature signature(long[] ofSetup) {
        return new Signature(ofSetup, this);
    }

    /** Numbers compared one by one. */
    static final class Signature {
        private final long[] ofSetup;
        private final long[] own;
        private final int hash;

        private Signature(long[] ofSetup, Problem problem) {
            this.ofSetup = ofSetup;
            this.own = own(problem);
            this.hash = 31 * Arrays.hashCode(ofSetup) + Arrays.hashCode(own);
        }

        private static int number(Setup.Role role) {
            return switch (role) {
                case MUST -> 0;
                case WISH -> 1;
                case NEED -> 2;
                case LIMIT -> 3;
            };
        }

        /** A setup as numbers. */
        static long[] numbers(Setup setup) {
            Setup.Items items = setup.items();
            var all = new Numbers(8 * (items.count() + 2 * setup.rows().size()));
            all.add(items.count());
            for (int i = 0; i < items.count(); i++) {
                all.add(items.cents()[i]);
                all.add(items.most()[i]);
                all.add(items.minutes()[i]);
                all.add(items.excludes()[i].length);
                for (int other : items.excludes()[i]) {
                    all.add(other);
                }
            }
            for (int r = 0; r < setup.rows().size(); r++) {
                Setup.Row row = setup.rows().get(r);
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
            return other instanceof Signature signature
                    && hash == signature.hash
                    && Arrays.equals(own, signature.own)
                    && Arrays.equals(ofSetup, signature.ofSetup);
        }

        @Override
        public int hashCode() {
            return hash;
        }
    }

    /** A row of numbers that grows. */
    private static final class Numbers {
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
