package fencerow.needs;

import fencerow.needs.Question.Option;
import fencerow.needs.Question.Typical;
import fencerow.terms.OptionId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.ToIntFunction;
import java.util.random.RandomGenerator;

/**
 * Guesses how a shopper like others would answer the questions still open, by the prior weights of the answers.
 *
 * @param questionnaire the questions
 * @param random        the source of the guesses; a seeded one gives the same guesses again
 */
public record Completion(Questionnaire questionnaire, RandomGenerator random) {
    /** Out of so many shoppers an option's share is counted where several can be picked. */
    private static final double SHARE_OF = 10;

    /** The answers with every question that applies and is open answered by a guess. */
    public Answers complete(Answers given) {
        Answers all = given;
        for (Question question : questionnaire.questions()) {
            boolean open = all.find(question.id()).isEmpty();
            if (open && questionnaire.applies(question, all)) {
                Optional<Answer> guess = guess(question);
                if (guess.isPresent()) {
                    all = all.with(question.id(), guess.get());
                }
            }
        }
        return all;
    }

    private Optional<Answer> guess(Question question) {
        return switch (question.choose()) {
            case ONE -> byShare(question.options(), Option::share)
                    .map(option -> new Answer.Chosen(List.of(option.id())));
            case SEVERAL -> Optional.of(new Answer.Chosen(each(question.options())));
            case JOBS -> Optional.of(new Answer.Chosen(someJobs()));
            case AMOUNT -> question.scale()
                    .flatMap(scale -> byShare(scale.typical(), Typical::share))
                    .map(typical -> new Answer.Measured(typical.value()));
        };
    }

    private <T> Optional<T> byShare(List<T> choices, ToIntFunction<T> share) {
        int all = choices.stream().mapToInt(share).sum();
        if (all <= 0) {
            return Optional.empty();
        }
        int drawn = random.nextInt(all);
        for (T choice : choices) {
            drawn -= share.applyAsInt(choice);
            if (drawn < 0) {
                return Optional.of(choice);
            }
        }
        return Optional.empty();
    }

    private List<OptionId> each(List<Option> options) {
        List<OptionId> picked = new ArrayList<>();
        for (Option option : options) {
            if (random.nextDouble() < option.share() / SHARE_OF) {
                picked.add(option.id());
            }
        }
        return picked;
    }

    /** Two jobs: nobody comes for none, and a longer list would only blur the guess. */
    private List<OptionId> someJobs() {
        List<Job> jobs = new ArrayList<>(questionnaire.jobs());
        List<OptionId> picked = new ArrayList<>();
        while (picked.size() < 2 && !jobs.isEmpty()) {
            picked.add(new OptionId(jobs.remove(random.nextInt(jobs.size())).id().value()));
        }
        return picked;
    }
}
