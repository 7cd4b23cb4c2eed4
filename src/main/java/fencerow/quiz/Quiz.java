package fencerow.quiz;

import fencerow.terms.AtStake;
import fencerow.terms.FeatureId;
import fencerow.terms.QuestionId;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SplittableRandom;
import java.util.function.Function;

/**
 * The quiz: which question comes next, and what the answers come to.
 *
 * @param questions all questions, in file order
 */
public record Quiz(List<QuizQuestion> questions) {
    /** Copies the list. */
    public Quiz {
        questions = List.copyOf(questions);
    }

    /**
     * What one question is worth to this shopper.
     *
     * @param atStake   what being wrong costs
     * @param relevance to the shopper's work: 1 for what a must-have needs, less for the rest
     */
    public record Worth(AtStake atStake, double relevance) {
        /** Chance of being wrong, times money in dollars, times relevance. */
        double expected(double wrong) {
            return wrong * atStake.money().middle().toDollars() * relevance;
        }
    }

    /**
     * The question with the most at stake that has not been answered: the job itself before any money, then chance of
     * being wrong times money times relevance. Where that is equal, the seed decides, so that two shoppers in a row
     * are not asked in the same order.
     */
    public Optional<QuizQuestion> next(Beliefs beliefs, Function<QuizQuestion, Worth> worth, long seed) {
        Comparator<QuizQuestion> most = Comparator.<QuizQuestion, Boolean>comparing(
                        question -> worth.apply(question).atStake().job())
                .thenComparingDouble(question -> worth.apply(question).expected(question.wrong()))
                .thenComparingLong(question -> turn(question, seed));
        return questions.stream()
                .filter(question -> beliefs.find(question.id()).isEmpty())
                .reduce((best, each) -> most.compare(each, best) > 0 ? each : best);
    }

    private static long turn(QuizQuestion question, long seed) {
        return new SplittableRandom(seed ^ question.id().value().hashCode()).nextLong();
    }

    /** The question with the id. */
    public Optional<QuizQuestion> find(QuestionId id) {
        return questions.stream().filter(question -> question.id().equals(id)).findFirst();
    }

    /** For each question answered, how it turned out; in file order. */
    public Map<QuizQuestion, Outcome> outcomes(Beliefs beliefs) {
        Map<QuizQuestion, Outcome> outcomes = new LinkedHashMap<>();
        for (QuizQuestion question : questions) {
            beliefs.find(question.id()).ifPresent(belief -> outcomes.put(question, question.outcome(belief)));
        }
        return outcomes;
    }

    /** How the shopper's beliefs about the feature turned out: wrong if any is wrong, else unsure if any is. */
    public Optional<Outcome> outcome(FeatureId feature, Beliefs beliefs) {
        return outcomes(beliefs).entrySet().stream()
                .filter(entry -> entry.getKey().feature().equals(Optional.of(feature)))
                .map(Map.Entry::getValue)
                .max(Comparator.comparingInt(Quiz::gravity));
    }

    private static int gravity(Outcome outcome) {
        return switch (outcome) {
            case RIGHT -> 0;
            case UNSURE -> 1;
            case WRONG -> 2;
        };
    }
}
