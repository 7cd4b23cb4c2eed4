package fencerow.kiosk.quote;

import fencerow.kiosk.compare.CompareModel;
import fencerow.terms.FeatureId;
import fencerow.wording.Bill;
import java.util.List;
import java.util.Optional;

/** What one step of telling shows. */
sealed interface QuoteModel {
    /**
     * Size, age and hours.
     *
     * @param hours in words where any are told; empty text where none are; absent for a new machine
     */
    record Machine(List<Choice> sizes, List<Choice> states, Optional<Hours> hours) implements QuoteModel {
        /** Copies the lists. */
        public Machine {
            sizes = List.copyOf(sizes);
            states = List.copyOf(states);
        }
    }

    /** One thing to pick; {@code key} tells it from the others. */
    record Choice(String key, String words, Optional<String> hint, boolean chosen) {}

    /** Hours on the meter, common ones to pick, and buttons to change them by. */
    record Hours(String words, List<Choice> common, List<Change> changes) {
        /** Copies the lists. */
        public Hours {
            common = List.copyOf(common);
            changes = List.copyOf(changes);
        }
    }

    /** A change by so much, in words. */
    record Change(int by, String words) {}

    /**
     * What the seller asks, line by line; one of them is being typed.
     *
     * @param sum       out the door
     * @param afterTrade what is left to pay of it, where they allow for a trade-in
     */
    record Price(List<Field> fields, String sum, Optional<String> afterTrade) implements QuoteModel {
        /** Copies the lists. */
        public Price {
            fields = List.copyOf(fields);
        }
    }

    /** A line of the price. */
    record Field(PriceLine line, String name, String amount, boolean typing) {}

    /** What is on it, in walk-around order. */
    record Equipment(List<Seen> features) implements QuoteModel {
        /** Copies the lists. */
        public Equipment {
            features = List.copyOf(features);
        }
    }

    /** A feature, and whether the shopper saw it; empty where they do not know. */
    record Seen(FeatureId feature, String name, String check, Optional<Boolean> there) {}

    /**
     * Beside the best one here.
     *
     * @param summary what it comes to
     * @param against why it cannot be made ready, where it cannot
     * @param notes   what to keep in mind
     * @param difference where the difference comes from; empty where there is none to tell
     * @param units   the two, the told one first; it alone where there is no other
     */
    record Beside(
            String summary,
            List<String> against,
            List<String> notes,
            Optional<Difference> difference,
            CompareModel units) implements QuoteModel {
        /** Copies the lists. */
        public Beside {
            against = List.copyOf(against);
            notes = List.copyOf(notes);
        }
    }

    /** Lines that add up to the sum: what the told one costs more or less for each. */
    record Difference(List<Bill.Line> lines, String sum) {
        /** Copies the lines. */
        public Difference {
            lines = List.copyOf(lines);
        }
    }
}
