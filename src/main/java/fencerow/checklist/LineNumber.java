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
        MASS("mass");

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
