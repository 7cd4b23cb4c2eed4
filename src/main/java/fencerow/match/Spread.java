package fencerow.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * What a feature may add to each row on units of which different things are known.
 *
 * @param least      at least
 * @param most       at most
 * @param unverified what it may add beyond where nobody has checked
 */
record Spread(Sparse least, Sparse most, List<Problem.Piece> unverified) {
    /**
     * What is known of it.
     *
     * @param contributions of each thing known of it in the lot; told apart by identity
     * @param seen          places of those that are known on these units
     */
    record Key(List<Contribution> contributions, int[] seen) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && contributions == key.contributions && Arrays.equals(seen, key.seen);
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(contributions) + Arrays.hashCode(seen);
        }
    }

    /** The spread of a feature, given its place in the catalogue. */
    static Spread of(int feature, Key key) {
        List<Sparse> states = new ArrayList<>();
        List<Problem.Piece> unverified = new ArrayList<>();
        for (int fact : key.seen()) {
            Contribution adds = key.contributions().get(fact);
            if (adds.open().isEmpty()) {
                states.add(adds.known());
            } else {
                adds.open().forEach(open -> states.add(adds.known().plus(open)));
                unverified.add(new Problem.Piece(feature, adds.open()));
            }
        }
        Contribution any = Contribution.of(states);
        return new Spread(any.known(), any.known().plus(most(any.open())), unverified);
    }

    /** The most that any of the states, none negative, adds to each row. */
    static Sparse most(List<Sparse> states) {
        Sparse most = Sparse.NOTHING;
        for (Sparse state : states) {
            Sparse before = most;
            Sparse both = before.plus(state);
            most = Sparse.at(both.places(), row -> Math.max(before.at(row), state.at(row)));
        }
        return most;
    }
}
