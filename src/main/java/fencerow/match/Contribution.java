package fencerow.match;

import java.util.Arrays;
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
        int[] places = states.stream()
                .flatMapToInt(state -> Arrays.stream(state.places()))
                .sorted()
                .distinct()
                .toArray();
        Sparse least = Sparse.at(places, row -> states.stream().mapToLong(state -> state.at(row)).min().orElse(0));
        List<Sparse> open = states.stream()
                .map(state -> Sparse.at(places, row -> state.at(row) - least.at(row)))
                .toList();
        return new Contribution(least, open);
    }
}
