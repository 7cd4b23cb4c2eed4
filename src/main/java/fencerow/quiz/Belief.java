package fencerow.quiz;

import fencerow.terms.OptionId;
import java.util.Optional;

/**
 * What the shopper answered to one quiz question.
 *
 * @param option what was picked; empty for "not sure"
 * @param sure   whether the shopper said to be sure of it
 */
public record Belief(Optional<OptionId> option, boolean sure) {
    /** "Not sure". */
    public static final Belief NOT_SURE = new Belief(Optional.empty(), false);

    /** Picked, without a word on how sure. */
    public static Belief of(OptionId option) {
        return new Belief(Optional.of(option), false);
    }
}
