package fencerow.needs;

import fencerow.terms.Amount;
import fencerow.terms.OptionId;
import java.util.List;
import java.util.Set;

/** What the shopper said to one question. A question skipped has no answer at all. */
public sealed interface Answer {
    /**
     * Picked from the options.
     *
     * @param options in the order they were picked; none repeated
     */
    record Chosen(List<OptionId> options) implements Answer {
        /** @throws IllegalArgumentException if an option is picked twice */
        public Chosen {
            options = List.copyOf(options);
            if (Set.copyOf(options).size() != options.size()) {
                throw new IllegalArgumentException("an option is picked twice in " + options);
            }
        }

        /** One option. */
        public static Chosen of(String option) {
            return new Chosen(List.of(new OptionId(option)));
        }
    }

    /** A number. */
    record Measured(Amount amount) implements Answer {}

    /** "Not sure": asked, and left open. */
    record NotSure() implements Answer {}
}
