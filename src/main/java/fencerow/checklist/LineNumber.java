package fencerow.checklist;

import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Spread;

/**
 * The number that a line is to be checked against, worked out from the shopper's own work.
 *
 * @param kind   what it is
 * @param amount a range where it depends on the machine
 */
public record LineNumber(Kind kind, Spread<Amount> amount) {
    /** What numbers a line may carry, each of a capability: where that is a must-have, the work needs the line. */
    public enum Kind {
        /** Loader lift to find on the plate, at least. */
        LIFT("lift", "loader-lift"),
        /** Weight behind to ask for, at least. */
        BALLAST("ballast", "hitch-weight"),
        /** Height through the door, at most. */
        HEIGHT("height", "height"),
        /** Power at the PTO, at least. */
        PTO_POWER("pto-power", "pto-power"),
        /** What may stand on the trailer, at most. */
        MASS("mass", "transport-mass"),
        /** Width of a mower that is done in the shopper's time, at least. */
        MOWING_WIDTH("mowing-width", "mowing-width"),
        /** Height to which the loader lifts, at least. */
        LOADER_HEIGHT("loader-height", "loader-height"),
        /** The gap that the tires must go through, at most. */
        GATE_WIDTH("gate-width", "tire-width"),
        /** Hitch lift 610 mm (24 in) behind the link ends, at least. */
        HITCH_LIFT("hitch-lift", "hitch-lift"),
        /** Oil flow at the remotes and the loader, at least. */
        FLOW("oil-flow", "hydraulic-flow");

        private final String id;
        private final CapabilityId capability;

        Kind(String id, String capability) {
            this.id = id;
            this.capability = new CapabilityId(capability);
        }

        /** What the number is a number of. */
        public CapabilityId capability() {
            return capability;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }
    }
}
