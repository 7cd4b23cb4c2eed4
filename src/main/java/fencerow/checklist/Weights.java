package fencerow.checklist;

/**
 * How much a feature counts by how it bears on the shopper's work; set by the showroom.
 *
 * @param must  needed by a must-have
 * @param wish  needed by a wish
 * @param other neither
 */
public record Weights(double must, double wish, double other) {
    /** 1, a half, a fifth. */
    public static final Weights USUAL = new Weights(1, 0.5, 0.2);

    /** @throws IllegalArgumentException unless must, wish and other fall from at most 1 to at least 0 */
    public Weights {
        if (!(1 >= must && must >= wish && wish >= other && other >= 0)) {
            throw new IllegalArgumentException("relevance weights " + must + ", " + wish + ", " + other
                    + " must not rise and must lie between 0 and 1");
        }
    }
}
