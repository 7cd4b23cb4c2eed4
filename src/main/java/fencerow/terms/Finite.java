package fencerow.terms;

/** The checks that all quantity records share. */
final class Finite {
    private Finite() {}

    /**
     * Checks a quantity's number.
     *
     * @throws IllegalArgumentException if it is infinite or not a number
     */
    static void require(Dimension dimension, double si) {
        if (!Double.isFinite(si)) {
            throw new IllegalArgumentException(
                    dimension.id() + " [" + si + "] is not a number; give a finite one");
        }
    }

    /**
     * Takes the number out of an amount of the expected dimension.
     *
     * @throws IllegalArgumentException if the amount measures something else
     */
    static double of(Dimension expected, Amount amount) {
        if (amount.dimension() != expected) {
            throw new IllegalArgumentException("[" + amount.si() + " " + amount.dimension().symbol() + "] is a "
                    + amount.dimension().id() + "; give a " + expected.id() + " in " + expected.symbol());
        }
        return amount.si();
    }
}
