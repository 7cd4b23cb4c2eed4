package fencerow.match;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Completion;
import fencerow.needs.Question;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/**
 * How well the choice of questions does: shoppers are made up from the questions' priors, asked only what
 * {@link NextQuestion} would ask them, and the first units held against those of all their answers.
 *
 * @param next chooses the questions
 */
public record Simulation(NextQuestion next) {
    /**
     * One made-up shopper.
     *
     * @param asked     how many questions they were asked before no more would have told much
     * @param applying  how many questions apply to all their answers
     * @param sameFirst whether the first units are those of all their answers, in the same order
     */
    public record Shopper(int asked, int applying, boolean sameFirst) {}

    /**
     * Sends so many shoppers through.
     *
     * @param seed the same one gives the same shoppers
     */
    public List<Shopper> of(Lot lot, int count, long seed) {
        var completion = new Completion(next.questionnaire(), new Random(seed));
        List<Shopper> shoppers = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            shoppers.add(shopper(lot, completion.complete(Answers.NONE)));
        }
        return shoppers;
    }

    private Shopper shopper(Lot lot, Answers all) {
        Answers told = Answers.NONE;
        int asked = 0;
        Optional<Question> question = next.after(told, lot);
        while (question.isPresent()) {
            told = told.with(
                    question.get().id(), all.find(question.get().id()).orElseGet(Answer.NotSure::new));
            asked++;
            question = next.after(told, lot);
        }
        return new Shopper(
                asked, next.questionnaire().applying(all).size(), first(lot, told).equals(first(lot, all)));
    }

    private List<UnitId> first(Lot lot, Answers answers) {
        return Ranking.of(lot, next.questionnaire().needs(answers)).first(next.first());
    }
}
