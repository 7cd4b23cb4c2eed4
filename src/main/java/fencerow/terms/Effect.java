package fencerow.terms;

import java.util.Set;

/**
 * What a thing on a tractor does to one capability.
 *
 * @param of     the capability
 * @param amount what it adds; negative where it takes
 * @param in     the working states in which it counts; empty for every state
 */
public record Effect(CapabilityId of, Amount amount, Set<StateId> in) {
    /** Copies the states. */
    public Effect {
        in = Set.copyOf(in);
    }

    /** One piece of a capability, in every state. */
    public static Effect one(CapabilityId of) {
        return new Effect(of, Amount.count(1), Set.of());
    }

    /** The same from several pieces. */
    public Effect times(int count) {
        return count == 1 ? this : new Effect(of, new Amount(amount.dimension(), amount.si() * count), in);
    }

    /** Whether it counts in the state. */
    public boolean countsIn(StateId state) {
        return in.isEmpty() || in.contains(state);
    }
}
