package fencerow.match;

import fencerow.stock.AddOn;
import fencerow.stock.Fitter;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import java.util.Random;
import java.util.Set;

/** Seeded random instances of the planner: alternatives, counts, exclusions, shared resources, three working states. */
final class RandomProblems {
    private static final int STATES = 3;
    private final Random random;

    RandomProblems(long seed) {
        this.random = new Random(seed);
    }

    /** An instance with up to 14 items; must-haves are rows 0 to {@code musts - 1}. */
    Problem next() {
        int itemCount = 2 + random.nextInt(13);
        int musts = 1 + random.nextInt(6);
        List<Setup.Candidate> items = new ArrayList<>();
        for (int i = 0; i < itemCount; i++) {
            items.add(candidate(i));
        }
        List<Setup.Row> rows = new ArrayList<>();
        for (int m = 0; m < musts; m++) {
            rows.add(row(Setup.Role.MUST, -1, m, coefficients(itemCount, true), 1 + random.nextInt(4)));
        }
        for (int i = 0; i < itemCount; i++) {
            if (random.nextInt(3) == 0) {
                rows.add(row(Setup.Role.NEED, i, -1, coefficients(itemCount, true), 1 + random.nextInt(2)));
            }
        }
        if (random.nextBoolean()) {
            rows.add(row(Setup.Role.LIMIT, -1, -1, taking(itemCount), -1 - random.nextInt(4)));
        }
        for (int state = 0; state < STATES; state++) {
            if (random.nextInt(3) == 0) {
                rows.add(row(Setup.Role.LIMIT, -1, -1, coefficients(itemCount, false), -2));
            }
        }
        long[] base = new long[rows.size()];
        for (int r = 0; r < base.length; r++) {
            base[r] = random.nextInt(4) == 0 ? random.nextInt(3) : 0;
        }
        return new Problem(new Setup(items, rows, excludes(itemCount)), base, pieces(rows.size()));
    }

    private List<Problem.Piece> pieces(int rows) {
        List<Problem.Piece> pieces = new ArrayList<>();
        for (int p = random.nextInt(4); p > 0; p--) {
            long[][] contribution = new long[2 + random.nextInt(2)][rows];
            for (int s = 1; s < contribution.length; s++) {
                for (int r = 0; r < rows; r++) {
                    contribution[s][r] = random.nextInt(3) == 0 ? random.nextInt(4) - 1 : 0;
                }
            }
            pieces.add(new Problem.Piece(new FeatureId("piece-" + p), contribution));
        }
        return pieces;
    }

    private Setup.Candidate candidate(int index) {
        long dollars = random.nextInt(8) == 0 ? 0 : 50L * (1 + random.nextInt(60));
        PriceRange price = PriceRange.exactly(Money.ofDollars(dollars));
        var item = new AddOn(
                new ItemId("item-" + index),
                Set.of(MachineClass.MID),
                3,
                List.of(),
                List.of(),
                Set.of(),
                new AddOn.Fitting(1, 2),
                Fitter.OWNER,
                OptionalInt.empty());
        return new Setup.Candidate(item, 1 + random.nextInt(3), price, price.middle().cents(), random.nextInt(200));
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

    private static Setup.Row row(
            Setup.Role role, int owner, int requirement, long[] coefficient, long bound) {
        return new Setup.Row(
                role,
                owner,
                requirement,
                new CapabilityId("capability"),
                Relation.AT_LEAST,
                Dimension.COUNT,
                coefficient,
                bound);
    }

    private boolean[][] excludes(int items) {
        boolean[][] excludes = new boolean[items][items];
        for (int n = random.nextInt(3); n > 0; n--) {
            int a = random.nextInt(items);
            int b = random.nextInt(items);
            if (a != b) {
                excludes[a][b] = true;
                excludes[b][a] = true;
            }
        }
        return excludes;
    }
}
