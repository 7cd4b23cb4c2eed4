package fencerow.match;

import java.util.ArrayList;
import java.util.List;

/**
 * What a feature adds to each row.
 *
 * @param known at least, whatever it turns out to be
 * @param open  for each state it may turn out to be in, what that adds beyond; empty where there is only one
 */
record Contribution(Sparse known, List<Sparse> open) {
    /** The contribution of a feature that is in one of the states. */
    static Contribution of(List<Sparse> states) {
        if (states.size() == 1) {
            return new Contribution(states.get(0), List.of());
        }
        Sparse all = states.get(0);
        for (Sparse state : states.subList(1, states.size())) {
            all = all.plus(state);
        }
        int[] places = all.places();
        Sparse least = Sparse.at(places, row -> least(states, row));
        List<Sparse> open = states.stream()
                .map(state -> Sparse.at(places, row -> state.at(row) - least.at(row)))
                .toList();
        return new Contribution(least, open);
    }

    /** What it adds to some rows, by their places among those. */
    Contribution within(int[] rows) {
        if (open.isEmpty()) {
            return new Contribution(known.within(rows), open);
        }
        List<Sparse> inside = new ArrayList<>(open.size());
        boolean matters = false;
        for (Sparse state : open) {
            inside.add(state.within(rows));
            matters |= inside.get(inside.size() - 1).size() > 0;
        }
        return new Contribution(known.within(rows), matters ? inside : List.of());
    }

    private static long least(List<Sparse> states, int row) {
        long least = Long.MAX_VALUE;
        for (Sparse state : states) {
            least = Math.min(least, state.at(row));
        }
        return least;
    }
}
