package fencerow.terms;

import java.util.List;

/**
 * A capability that is neither a feature, one kind of a feature nor a figure.
 *
 * @param id        its id
 * @param dimension {@link Dimension#COUNT} for flags and counts
 * @param combine   how several sources of it go together
 * @param own       the model's figures it starts from, summed
 * @param supply    what every tractor starts with on top of that, when it is a shared resource: users take from it, and
 *                  it may never fall below nothing; 0 for all others
 */
public record Capability(CapabilityId id, Dimension dimension, Combine combine, List<Figure> own, int supply) {
    /** How several sources of a capability go together. */
    public enum Combine {
        /** Amounts add up. */
        SUM,
        /** The best single source counts. */
        MAX
    }

    /** @throws IllegalArgumentException if a figure measures something else or the supply is negative */
    public Capability {
        own = List.copyOf(own);
        for (Figure figure : own) {
            if (figure.dimension() != dimension) {
                throw new IllegalArgumentException("capability [" + id + "] measures " + dimension
                        + " but starts from [" + figure.id() + "], a " + figure.dimension()
                        + "; use figures of one dimension");
            }
        }
        if (supply < 0) {
            throw new IllegalArgumentException("supply [" + supply + "] of [" + id + "] is negative; use 0 or more");
        }
    }
}
