package fencerow.match;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;

/** Seeded random instances of the planner: alternatives, counts, exclusions, shared resources, three working states. */
final class RandomProblems {
    private static final int STATES = 3;
    private final Random random;

    RandomProblems(long seed) {
        this.random = new Random(seed);
    }

    /** An instance with up to 14 items; must-haves come first. */
    Problem next() {
        int itemCount = 2 + random.nextInt(13);
        int musts = 1 + random.nextInt(6);
        Setup.Items items = items(itemCount);
        List<Setup.Row> rows = new ArrayList<>();
        List<Integer> bounds = new ArrayList<>();
        for (int m = 0; m < musts; m++) {
            rows.add(new Setup.Row(Setup.Role.MUST, m, Sparse.of(coefficients(itemCount, true))));
            bounds.add(1 + random.nextInt(4));
        }
        for (int i = 0; i < itemCount; i++) {
            if (random.nextInt(3) == 0) {
                rows.add(new Setup.Row(Setup.Role.NEED, i, Sparse.of(coefficients(itemCount, true))));
                bounds.add(1 + random.nextInt(2));
            }
        }
        if (random.nextBoolean()) {
            rows.add(new Setup.Row(Setup.Role.LIMIT, -1, Sparse.of(taking(itemCount))));
            bounds.add(-1 - random.nextInt(4));
        }
        for (int state = 0; state < STATES; state++) {
            if (random.nextInt(3) == 0) {
                rows.add(new Setup.Row(Setup.Role.LIMIT, -1, Sparse.of(coefficients(itemCount, false))));
                bounds.add(-2);
            }
        }
        long[] headroom = new long[rows.size()];
        for (int r = 0; r < headroom.length; r++) {
            headroom[r] = (random.nextInt(4) == 0 ? random.nextInt(3) : 0) - (long) bounds.get(r);
        }
        List<Problem.Piece> pieces = pieces(headroom);
        return new Problem(new Setup(items, rows), headroom, pieces);
    }

    private List<Problem.Piece> pieces(long[] headroom) {
        List<Problem.Piece> pieces = new ArrayList<>();
        for (int p = random.nextInt(4); p > 0; p--) {
            List<Sparse> states = new ArrayList<>(List.of(Sparse.NOTHING));
            for (int s = 1 + random.nextInt(2); s > 0; s--) {
                long[] state = new long[headroom.length];
                for (int r = 0; r < state.length; r++) {
                    state[r] = random.nextInt(3) == 0 ? random.nextInt(4) - 1 : 0;
                }
                states.add(Sparse.of(state));
            }
            Contribution contribution = Contribution.of(states);
            contribution.known().addTo(headroom);
            pieces.add(new Problem.Piece(p, contribution.open()));
        }
        return pieces;
    }

    private Setup.Items items(int count) {
        long[] cents = new long[count];
        int[] most = new int[count];
        int[] minutes = new int[count];
        for (int i = 0; i < count; i++) {
            cents[i] = random.nextInt(8) == 0 ? 0 : 5000L * (1 + random.nextInt(60));
            most[i] = 1 + random.nextInt(3);
            minutes[i] = random.nextInt(200);
        }
        return new Setup.Items(cents, most, minutes, excludes(count));
    }

    private long[] coefficients(int items, boolean helpful) {
        long[] coefficient = new long[items];
        for (int i = 0; i < items; i++) {
            int kind = random.nextInt(10);
            if (kind < 3) {
                coefficient[i] = 1L + random.nextInt(3);
            } else if (kind == 3 || (!helpful && kind < 6)) {
                coefficient[i] = -1L - random.nextInt(2);
            }
        }
        return coefficient;
    }

    private long[] taking(int items) {
        long[] coefficient = new long[items];
        for (int i = 0; i < items; i++) {
            coefficient[i] = random.nextInt(3) == 0 ? -1 : 0;
        }
        return coefficient;
    }

    private int[][] excludes(int items) {
        List<Set<Integer>> excludes = new ArrayList<>();
        for (int i = 0; i < items; i++) {
            excludes.add(new TreeSet<>());
        }
        for (int n = random.nextInt(3); n > 0; n--) {
            int a = random.nextInt(items);
            int b = random.nextInt(items);
            if (a != b) {
                excludes.get(a).add(b);
                excludes.get(b).add(a);
            }
        }
        return excludes.stream()
                .map(others -> others.stream().mapToInt(Integer::intValue).toArray())
                .toArray(int[][]::new);
    }
}
