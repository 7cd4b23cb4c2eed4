package fencerow.match;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Completion;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.BooleanSupplier;

/**
 * Chooses the needs question that would tell most about which units come first.
 *
 * <p>The open questions are answered by guesses a number of times and the units ranked for each. A question's gain is
 * how far the entropy (bits) of the first few units falls when the guesses are grouped by its answer, less how far it
 * falls by chance: on average when the same answers are dealt to the guesses at random, which is the mean of a
 * permutation test. Without that a question with many answers would always win, and where nearly every guess leads to
 * other first units no correction by formula does. Nothing more need be asked when nearly all guesses agree on the
 * first few, or no question tells anything.
 *
 * @param questionnaire the questions
 * @param draws         how many guesses; more is steadier and slower
 * @param agreement     the share of guesses that must agree to stop, above 0 and at most 1
 * @param first         how many units from the top count
 */
public record NextQuestion(Questionnaire questionnaire, int draws, double agreement, int first) {
    /** How often answers are dealt to guesses at random. */
    private static final int DEALS = 20;

    /** As the kiosk asks: 64 guesses, 95 in 100 agreeing on the first three units. */
    public static NextQuestion usual(Questionnaire questionnaire) {
        return new NextQuestion(questionnaire, 64, 0.95, 3);
    }

    /** @throws IllegalArgumentException if a number is out of range */
    public NextQuestion {
        if (draws < 2 || !(agreement > 0 && agreement <= 1) || first < 1) {
            throw new IllegalArgumentException("draws " + draws + ", agreement " + agreement + ", first " + first
                    + " are out of range; use at least 2 draws, an agreement above 0 and at most 1, 1 unit or more");
        }
    }

    /** One guess and what it led to. */
    private record Draw(Answers answers, List<UnitId> top) {}

    /** A question with what asking it would tell. */
    private record Gain(Question question, double bits) {}

    /**
     * The question to ask next; empty when more answers would hardly change the first units. The same answers and units
     * give the same question.
     */
    public Optional<Question> after(Answers answers, Lot lot) {
        return after(answers, lot, () -> false);
    }

    /**
     * The same; empty, too, once {@code dropped} says that nobody waits for it any more. It is asked after each guess.
     */
    public Optional<Question> after(Answers answers, Lot lot, BooleanSupplier dropped) {
        List<Question> open = questionnaire.applying(answers).stream()
                .filter(question -> answers.find(question.id()).isEmpty())
                .toList();
        if (open.isEmpty() || lot.units().isEmpty()) {
            return Optional.empty();
        }
        List<Draw> drawn = draw(answers, lot, dropped);
        if (dropped.getAsBoolean() || agree(drawn)) {
            return Optional.empty();
        }
        return open.stream()
                .map(question -> new Gain(question, gain(question, drawn)))
                .filter(gain -> gain.bits() > 1e-9)
                .max(Comparator.comparingDouble(Gain::bits))
                .map(Gain::question);
    }

    private List<Draw> draw(Answers answers, Lot lot, BooleanSupplier dropped) {
        var completion = new Completion(questionnaire, new Random(answers.toString().hashCode()));
        Solved solved = Solved.nothing();
        List<Draw> drawn = new ArrayList<>();
        for (int i = 0; i < draws && !dropped.getAsBoolean(); i++) {
            Answers complete = completion.complete(answers);
            var ranking = new Ranking(lot, questionnaire.needs(complete), solved);
            drawn.add(new Draw(complete, ranking.first(first)));
        }
        return drawn;
    }

    private boolean agree(List<Draw> drawn) {
        return counts(drawn).values().stream().anyMatch(count -> count >= agreement * drawn.size());
    }

    private static double gain(Question question, List<Draw> drawn) {
        List<Optional<Answer>> answers = new ArrayList<>(
                drawn.stream().map(draw -> draw.answers().find(question.id())).toList());
        double left = left(answers, drawn);
        var random = new Random(drawn.size());
        double byChance = 0;
        for (int deal = 0; deal < DEALS; deal++) {
            Collections.shuffle(answers, random);
            byChance += left(answers, drawn) / DEALS;
        }
        return byChance - left;
    }

    /** The entropy left when guesses are grouped by answers, one for each. */
    private static double left(List<Optional<Answer>> answers, List<Draw> drawn) {
        Map<Optional<Answer>, List<Draw>> groups = new LinkedHashMap<>();
        for (int i = 0; i < drawn.size(); i++) {
            groups.computeIfAbsent(answers.get(i), key -> new ArrayList<>()).add(drawn.get(i));
        }
        return groups.values().stream()
                .mapToDouble(group -> entropy(group) * group.size() / drawn.size())
                .sum();
    }

    private static double entropy(List<Draw> drawn) {
        double bits = 0;
        for (long count : counts(drawn).values()) {
            double share = (double) count / drawn.size();
            bits -= share * Math.log(share) / Math.log(2);
        }
        return bits;
    }

    private static Map<List<UnitId>, Long> counts(List<Draw> drawn) {
        Map<List<UnitId>, Long> counts = new HashMap<>();
        drawn.forEach(draw -> counts.merge(draw.top(), 1L, Long::sum));
        return counts;
    }
}
