package fencerow.needs;

import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Relation;
import fencerow.terms.StateId;

/**
 * What one answer asks of a machine.
 *
 * @param of       the capability
 * @param relation at least or at most
 * @param level    how much
 * @param in       the working state
 * @param must     must-have or wish
 * @param weight   of a wish
 */
public record Rule(CapabilityId of, Relation relation, Level level, StateId in, boolean must, int weight) {
    /** How much a rule asks for. */
    public sealed interface Level {
        /** A fixed amount. */
        record Fixed(Amount amount) implements Level {}

        /**
         * The amount the shopper gave.
         *
         * @param plus added to it; negative for a margin taken off
         */
        record Answered(Amount plus) implements Level {}

        /** The weight behind that lifting the answer needs; worked out per machine. */
        record Counterweight() implements Level {}

        /** The lift at the rated distance that lifts the answer at its own center; worked out per machine. */
        record Payload() implements Level {}

        /** The cutting width that mows the answered area in the answered time. */
        record MowingWidth() implements Level {}
    }
}
