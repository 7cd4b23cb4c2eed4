package fencerow.quiz;

import fencerow.terms.AnswerCount;
import fencerow.terms.FeatureId;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/**
 * A question about what the shopper believes, or about how to check something.
 *
 * @param id      its id
 * @param kind    belief or check
 * @param feature the feature it is about, where it is about one
 * @param topic   the explainer that tells more
 * @param options what can be picked, three
 * @param key     the right one
 * @param wrong   chance that a shopper is wrong, before anyone was asked; above 0 and below 1
 */
public record QuizQuestion(
        QuestionId id,
        Kind kind,
        Optional<FeatureId> feature,
        TopicId topic,
        List<OptionId> options,
        OptionId key,
        double wrong) {
    /** The belief scale: how a shopper thinks a feature comes. */
    public static final List<OptionId> BELIEF_SCALE = List.of(
            new OptionId("comes-with-it"), new OptionId("can-be-added"), new OptionId("cannot-be-added"));

    /** How many answers the chance before anyone was asked is worth. */
    public static final int PRIOR_ANSWERS = 20;

    /** Kinds of question. */
    public enum Kind {
        /** Does it come with a tractor, can it be added later? */
        BELIEF,
        /** How would you check, or what would you do? */
        CHECK
    }

    /** @throws IllegalArgumentException if the key is no option, there are not three, or the chance is out of range */
    public QuizQuestion {
        options = List.copyOf(options);
        if (options.size() != 3) {
            throw new IllegalArgumentException(
                    "question [" + id + "] has " + options.size() + " options; give exactly three");
        }
        if (!options.contains(key)) {
            throw new IllegalArgumentException("key [" + key + "] of question [" + id + "] is none of " + options);
        }
        if (!(wrong > 0 && wrong < 1)) {
            throw new IllegalArgumentException(
                    "chance of being wrong [" + wrong + "] of question [" + id + "] is not between 0 and 1");
        }
    }

    /**
     * With what shoppers have answered so far taken into account: the mean of a beta-binomial model in which the chance
     * before anyone was asked counts as {@value #PRIOR_ANSWERS} answers (A. Gelman et al., Bayesian Data Analysis, 3rd
     * ed., section 2.4). "Not sure" counts as an answer that was not wrong.
     */
    public QuizQuestion with(AnswerCount answers) {
        double posterior = (PRIOR_ANSWERS * wrong + answers.wrong()) / (PRIOR_ANSWERS + answers.answered());
        return new QuizQuestion(id, kind, feature, topic, options, key, posterior);
    }

    /** Whether it is about the topic, or about the feature of that name. */
    public boolean isAbout(TopicId about) {
        return topic.equals(about) || feature.filter(id -> id.value().equals(about.value())).isPresent();
    }

    /** What a belief comes to. */
    public Outcome outcome(Belief belief) {
        if (belief.option().isEmpty()) {
            return Outcome.UNSURE;
        }
        return belief.option().get().equals(key) ? Outcome.RIGHT : Outcome.WRONG;
    }
}
