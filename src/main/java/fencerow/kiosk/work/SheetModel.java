package fencerow.kiosk.work;

import fencerow.terms.TopicId;
import fencerow.wording.Bill;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** One calculation as it is shown. What changes with its numbers is observable. */
final class SheetModel {
    private final Card card;
    private final ObjectProperty<Shown> shown;

    SheetModel(Card card, Shown shown) {
        this.card = card;
        this.shown = new SimpleObjectProperty<>(shown);
    }

    Card card() {
        return card;
    }

    ObjectProperty<Shown> shown() {
        return shown;
    }

    /**
     * What does not change.
     *
     * @param ask     the question it answers
     * @param forUnit the tractor whose figures are filled in, in words
     * @param fields  what can be set
     * @param hidden  whether there are more fields than these
     * @param folds   whether some of these can be put away again
     * @param topics  explainers that say what this is
     */
    record Card(String ask, Optional<String> forUnit, List<Field> fields, boolean hidden, boolean folds,
            List<Link> topics) {
        Card {
            fields = List.copyOf(fields);
            topics = List.copyOf(topics);
        }
    }

    /** An explainer. */
    record Link(String title, TopicId topic) {}

    /** Something to set. */
    sealed interface Field {
        String id();

        String name();

        /** By taking away and adding. */
        record Count(String id, String name) implements Field {}

        /** By picking. */
        record Pick(String id, String name, List<Option> options) implements Field {
            /** Copies the options. */
            public Pick {
                options = List.copyOf(options);
            }
        }
    }

    /** One thing to pick. */
    record Option(String id, String words) {}

    /**
     * How things stand.
     *
     * @param values  of all fields, by id
     * @param answer  what it comes to
     * @param touched whether the shopper set anything
     */
    record Shown(Map<String, Value> values, Answer answer, boolean touched) {
        Shown {
            values = Map.copyOf(values);
        }
    }

    /**
     * What a field says.
     *
     * @param key   of the option picked; empty for a number
     * @param words the amount, or the option in words
     * @param note  where it comes from, or what is allowed where an end is reached; empty text for neither
     */
    record Value(String key, String words, String note, boolean canLess, boolean canMore) {}

    /**
     * What it comes to.
     *
     * @param name     what the answer is
     * @param amount   the answer; empty text where it is no number or the numbers were refused
     * @param refused  why the numbers were refused, where they were
     * @param says     answers that are no numbers, and the rules that decided
     * @param warnings what is suspicious
     * @param more     further results
     * @param cautions what can hurt someone
     * @param picture  the answer drawn, where it is
     */
    record Answer(String name, String amount, Optional<String> refused, List<String> says, List<String> warnings,
            List<Bill.Line> more, List<String> cautions, Optional<Picture> picture) {
        Answer {
            says = List.copyOf(says);
            warnings = List.copyOf(warnings);
            more = List.copyOf(more);
            cautions = List.copyOf(cautions);
        }
    }

    /**
     * How it was worked out.
     *
     * @param how     the formula in words
     * @param used    the numbers and options used
     * @param allowed what may be set, from least to most
     * @param sources where formula and figures come from
     */
    record Why(String how, List<Bill.Line> used, List<Bill.Line> allowed, List<String> sources) {
        Why {
            used = List.copyOf(used);
            allowed = List.copyOf(allowed);
            sources = List.copyOf(sources);
        }
    }

    /** What the shopper touched. */
    interface Touches {
        void move(String field, int steps);

        void pick(String field, String option);

        void reset();

        void showAll(boolean all);

        void why();

        void what();
    }
}
