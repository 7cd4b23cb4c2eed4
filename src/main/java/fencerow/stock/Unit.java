package fencerow.stock;

import fencerow.terms.Fact;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.UnitId;
import java.util.List;
import java.util.Map;
import java.util.OptionalInt;
import java.util.Set;

/**
 * One machine in stock, in transit, orderable, or told of by the shopper.
 *
 * @param year     model year
 * @param hours    on the meter
 * @param leadDays until it can be here; 0 in stock
 * @param facts    what is known of every feature
 * @param bundled  attachments that come with it at no further price
 * @param catchUp  noted condition to put right, by condition id
 */
public record Unit(
        UnitId id,
        Model model,
        Condition condition,
        OptionalInt year,
        OptionalInt hours,
        Availability availability,
        int leadDays,
        AskingPrice price,
        Map<FeatureId, Fact> facts,
        Set<ItemId> bundled,
        List<ItemId> catchUp) {
    /** Copies the collections. */
    public Unit {
        facts = Map.copyOf(facts);
        bundled = Set.copyOf(bundled);
        catchUp = List.copyOf(catchUp);
    }

    /** What is known of the feature; a feature nobody wrote down is not there. */
    public Fact fact(FeatureId feature) {
        return facts.getOrDefault(feature, Fact.absent());
    }
}
