package fencerow.search;

import fencerow.terms.FeatureId;
import fencerow.terms.Money;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * What a query such as "cab under 20000" asks of the units in stock.
 *
 * @param equipment what they must have: one of each set
 * @param atLeast   the lowest price
 * @param atMost    the highest price
 */
public record Intent(List<Set<FeatureId>> equipment, Optional<Money> atLeast, Optional<Money> atMost) {
    /** Nothing beyond the words. */
    public static final Intent NONE = new Intent(List.of(), Optional.empty(), Optional.empty());

    /** Copies the sets. */
    public Intent {
        equipment = equipment.stream().map(Set::copyOf).toList();
    }

    /** Whether it asks for nothing. */
    public boolean isNone() {
        return equals(NONE);
    }

    /** Whether the price is within the limits. */
    boolean takes(Money price) {
        return atLeast.map(low -> price.compareTo(low) >= 0).orElse(true)
                && atMost.map(high -> price.compareTo(high) <= 0).orElse(true);
    }
}
