package fencerow.checklist;

import fencerow.terms.Amount;
import fencerow.terms.Spread;

/**
 * The number that a line is to be checked against, worked out from the shopper's own work.
 *
 * @param kind   what it is
 * @param amount a range where it depends on the machine
 */
public record LineNumber(Kind kind, Spread<Amount> amount) {
    /** What numbers a line may carry. */
    public enum Kind {
        /** Loader lift to find on the plate, at least. */
        LIFT("lift"),
        /** Weight behind to ask for, at least. */
        BALLAST("ballast"),
        /** Height through the door, at most. */
        HEIGHT("height"),
        /** Power at the PTO, at least. */
        PTO_POWER("pto-power"),
        /** What may stand on the trailer, at most. */
        MASS("mass"),
        /** Width of a mower that is done in the shopper's time, at least. */
        MOWING_WIDTH("mowing-width"),
        /** Height to which the loader lifts, at least. */
        LOADER_HEIGHT("loader-height"),
        /** Width through the gate, at most. */
        GATE_WIDTH("gate-width"),
        /** Hitch lift 610 mm (24 in) behind the link ends, at least. */
        HITCH_LIFT("hitch-lift"),
        /** Oil flow at the remotes and the loader, at least. */
        FLOW("oil-flow");

        private final String id;

        Kind(String id) {
            this.id = id;
        }

        /** The word used in files and text keys. */
        public String id() {
            return id;
        }
    }
}
