package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;

/**
 * Something that hangs on the loader or the hitch and takes its share of the lift: a coupler, forks, a bucket.
 *
 * @param mass   its mass
 * @param center its center of gravity ahead of the pins (behind the link ends on a hitch)
 */
public record Carried(Mass mass, Length center) {
    /** @throws IllegalArgumentException if the mass is negative */
    public Carried {
        if (mass.si() < 0) {
            throw new IllegalArgumentException("carried mass " + mass.si() + " kg is negative; give 0 or more");
        }
    }
}
