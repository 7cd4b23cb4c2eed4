package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import java.util.Random;
import java.util.function.Consumer;

/** Seeded random cases; the seed stands in every failure. */
final class Draws {
    private static final long SEED = 4_711_2026L;
    private static final int CASES = 500;

    private final Random random;

    private Draws(Random random) {
        this.random = random;
    }

    /** Runs a check on many random cases. */
    static void forAll(Consumer<Draws> check) {
        for (int i = 0; i < CASES; i++) {
            long seed = SEED + i;
            try {
                check.accept(new Draws(new Random(seed)));
            } catch (AssertionError | RuntimeException e) {
                throw new AssertionError("seed " + seed + ": " + e.getMessage(), e);
            }
        }
    }

    double between(double low, double high) {
        return low + random.nextDouble() * (high - low);
    }

    int whole(int low, int high) {
        return low + random.nextInt(high - low + 1);
    }

    Length meters(double low, double high) {
        return Length.ofMeters(between(low, high));
    }

    Mass kilograms(double low, double high) {
        return Mass.ofKilograms(between(low, high));
    }

    /** A compact tractor standing on its wheels. */
    Axles axles() {
        return new Axles(kilograms(250, 900), kilograms(350, 1400), meters(1.3, 2.2));
    }
}
