package fencerow.sizing.catalogue;

import fencerow.terms.Amount;
import fencerow.terms.Quantity;
import fencerow.terms.Spread;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;

/**
 * What is given to a calculation, by parameter id. What is left out takes its preset.
 *
 * @param numbers values and ranges
 * @param choices ids of options
 */
public record Inputs(Map<String, Spread<Amount>> numbers, Map<String, String> choices) {
    /** Nothing given: all presets. */
    public static final Inputs NONE = new Inputs(Map.of(), Map.of());

    /** Copies both, in their order. */
    public Inputs {
        numbers = Collections.unmodifiableMap(new LinkedHashMap<>(numbers));
        choices = Collections.unmodifiableMap(new LinkedHashMap<>(choices));
    }

    /** With a value. */
    public Inputs with(String id, Quantity value) {
        return with(id, Spread.exactly(value.amount()));
    }

    /** With a range. */
    public Inputs with(String id, Spread<? extends Quantity> range) {
        Map<String, Spread<Amount>> more = new LinkedHashMap<>(numbers);
        more.put(id, range.amounts());
        return new Inputs(more, choices);
    }

    /** With a choice. */
    public Inputs choosing(String id, String option) {
        Map<String, String> more = new LinkedHashMap<>(choices);
        more.put(id, option);
        return new Inputs(numbers, more);
    }
}
