package fencerow.match;

import fencerow.needs.Requirement;
import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.FeatureId;
import fencerow.terms.PriceRange;
import fencerow.terms.Relation;
import java.util.List;

/**
 * One unit and one shopper's needs as numbers: choose counts of items so that every active row holds, at the least
 * price. A row holds when {@code base + sum of coefficient x count >= bound}; at-most demands are turned round.
 *
 * @param items    what can be had
 * @param rows     what must hold
 * @param base     for each row, what the unit gives by itself, unverified pieces not counted
 * @param pieces   unverified pieces that touch some row
 * @param excludes for each pair of items, whether they exclude each other
 */
record Problem(List<Candidate> items, List<Row> rows, long[] base, List<Piece> pieces, boolean[][] excludes) {

    /**
     * An item that can be had for this unit.
     *
     * @param cents middle price of one
     */
    record Candidate(Item item, int max, PriceRange price, long cents, int minutes) {}

    /** What a row stands for. */
    enum Role {
        /** A must-have: active while it is asked for. */
        MUST,
        /** A wish: never active, only read. */
        WISH,
        /** A need of an item: active while that item is there. */
        NEED,
        /** A limit of the model or of a shared resource: always active. */
        LIMIT
    }

    /**
     * One condition.
     *
     * @param role        what it stands for
     * @param owner       the item whose need it is, else -1
     * @param requirement the requirement's place in the needs, else -1
     * @param of          the capability
     * @param relation    as asked
     * @param dimension   of the capability
     * @param coefficient for each item what one piece adds
     * @param bound       what must be reached
     */
    record Row(
            Role role,
            int owner,
            int requirement,
            CapabilityId of,
            Relation relation,
            Dimension dimension,
            long[] coefficient,
            long bound) {
        /** The bound as the demand stated it. */
        Amount wanted() {
            return Amount.ofSteps(dimension, relation == Relation.AT_MOST ? -bound : bound);
        }

        /** A row value as an amount of the capability. */
        Amount amount(long value) {
            return Amount.ofSteps(dimension, relation == Relation.AT_MOST ? -value : value);
        }
    }

    /**
     * A feature nobody has checked.
     *
     * @param feature      the feature
     * @param contribution for each possible state, for each row, what it adds; the first state is the absent one if
     *                     that is possible
     */
    record Piece(FeatureId feature, long[][] contribution) {}

    /** The requirement a row stands for. */
    Requirement requirement(Row row, List<Requirement> requirements) {
        return requirements.get(row.requirement());
    }
}
