package fencerow.needs;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A question about the shopper's work.
 *
 * @param id     its id
 * @param choose what kind of answer it takes
 * @param when   asked only if, for some question here, one of these options was picked; empty for always
 * @param options what can be picked; empty for amounts
 * @param scale   the amounts that can be given; present for amounts only
 * @param rules   what a given amount asks of a machine
 */
public record Question(
        QuestionId id,
        Choose choose,
        Map<QuestionId, List<OptionId>> when,
        List<Option> options,
        Optional<Scale> scale,
        List<Rule> rules) {
    /** Copies the collections. */
    public Question {
        when = Map.copyOf(when);
        options = List.copyOf(options);
        rules = List.copyOf(rules);
    }

    /** The kinds of answer. */
    public enum Choose {
        /** One option. */
        ONE,
        /** Any number of options. */
        SEVERAL,
        /** Any number of jobs. */
        JOBS,
        /** A number. */
        AMOUNT
    }

    /**
     * One thing to pick.
     *
     * @param id    its id
     * @param share how many of ten or so shoppers pick it; a prior weight
     * @param rules what picking it asks of a machine
     * @param owns  attachments that picking it says the shopper has
     * @param hires jobs that picking it takes off the tractor
     * @param about the topic whose thing it is, for a picture
     */
    public record Option(OptionId id, int share, List<Rule> rules, List<ItemId> owns, List<JobId> hires,
            Optional<TopicId> about) {
        /** Copies the lists. */
        public Option {
            rules = List.copyOf(rules);
            owns = List.copyOf(owns);
            hires = List.copyOf(hires);
        }

        /** An option that is about no one thing. */
        public Option(OptionId id, int share, List<Rule> rules, List<ItemId> owns, List<JobId> hires) {
            this(id, share, rules, owns, hires, Optional.empty());
        }
    }

    /**
     * The amounts a question takes.
     *
     * @param dimension what is measured
     * @param from      the least
     * @param to        the most
     * @param step      of the buttons
     * @param typical   common answers with their prior weights, in rising order; the first shown is the heaviest
     */
    public record Scale(Dimension dimension, Amount from, Amount to, Amount step, List<Typical> typical) {
        /** @throws IllegalArgumentException if the range is empty, the step not positive or a common answer outside */
        public Scale {
            typical = List.copyOf(typical);
            if (!(from.si() < to.si()) || !(step.si() > 0)) {
                throw new IllegalArgumentException("from " + from.si() + " to " + to.si() + " by " + step.si()
                        + " is no scale; give from below to and a step above 0");
            }
            for (Typical each : typical) {
                if (each.value().si() < from.si() || each.value().si() > to.si()) {
                    throw new IllegalArgumentException("typical value " + each.value().si() + " lies outside "
                            + from.si() + " to " + to.si());
                }
            }
        }
    }

    /** A common amount and its prior weight. */
    public record Typical(Amount value, int share) {}

    /** The option with the id. */
    public Optional<Option> findOption(OptionId option) {
        return options.stream().filter(each -> each.id().equals(option)).findFirst();
    }
}
