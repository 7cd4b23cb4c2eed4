package fencerow.match;

import fencerow.terms.FeatureId;
import java.util.List;

/**
 * One unit for one shopper.
 *
 * @param setup  what it has in common with units of its kind
 * @param base   for each row, what the unit gives by itself, unverified pieces not counted
 * @param pieces unverified pieces that touch some row
 */
record Problem(Setup setup, long[] base, List<Piece> pieces) {
    /**
     * A feature nobody has checked.
     *
     * @param feature      the feature
     * @param contribution for each possible state, for each row, what it adds
     */
    record Piece(FeatureId feature, long[][] contribution) {}
}
