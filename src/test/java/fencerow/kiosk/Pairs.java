package fencerow.kiosk;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Random;
import java.util.Set;

/**
 * Picks few combinations of several factors' values such that any two values of different factors meet in one of them:
 * most mistakes come of one value or of two together (common practice, no source). Greedy: of random candidates the one
 * with most new pairs is taken.
 */
final class Pairs {
    private static final int CANDIDATES = 60;

    private Pairs() {}

    /**
     * Combinations, each a list of indices, one a factor.
     *
     * @param sizes how many values each factor has
     * @param seed  other seeds give other combinations, so that over many uses triples meet too
     */
    static List<List<Integer>> of(List<Integer> sizes, long seed) {
        Set<Pair> open = new HashSet<>();
        for (int i = 0; i < sizes.size(); i++) {
            for (int j = i + 1; j < sizes.size(); j++) {
                for (int a = 0; a < sizes.get(i); a++) {
                    for (int b = 0; b < sizes.get(j); b++) {
                        open.add(new Pair(i, a, j, b));
                    }
                }
            }
        }
        Random random = new Random(seed);
        List<List<Integer>> picked = new ArrayList<>();
        while (!open.isEmpty()) {
            List<Integer> best = List.of();
            long most = 0;
            for (int i = 0; i < CANDIDATES || most == 0; i++) {
                List<Integer> candidate = sizes.stream().map(random::nextInt).toList();
                long fresh = pairs(candidate).stream().filter(open::contains).count();
                if (fresh > most) {
                    best = candidate;
                    most = fresh;
                }
            }
            picked.add(best);
            open.removeAll(pairs(best));
        }
        return picked;
    }

    private static Set<Pair> pairs(List<Integer> combination) {
        Set<Pair> pairs = new HashSet<>();
        for (int i = 0; i < combination.size(); i++) {
            for (int j = i + 1; j < combination.size(); j++) {
                pairs.add(new Pair(i, combination.get(i), j, combination.get(j)));
            }
        }
        return pairs;
    }

    private record Pair(int factor, int value, int otherFactor, int otherValue) {}
}
