package fencerow.checklist;

import fencerow.checklist.ChecklistLine.Place;
import fencerow.checklist.LineTemplate.Audience;
import fencerow.needs.Requirement;
import fencerow.quiz.Belief;
import fencerow.quiz.Beliefs;
import fencerow.quiz.Outcome;
import fencerow.quiz.Quiz;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.AtStake;
import fencerow.terms.FeatureId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/**
 * Composes a shopper's list from their work, their beliefs and what belongs on every list.
 *
 * @param templates      the lines a list may hold
 * @param pageOne        how many lines page one holds
 * @param walkAwaySigns  how many signs its box holds
 */
public record Composer(List<LineTemplate> templates, int pageOne, int walkAwaySigns) {
    /** Chance of being wrong or of the thing missing where no quiz question tells. */
    private static final double EVEN_CHANCE = 0.5;

    private static final Comparator<ChecklistLine> MOST_AT_STAKE = Comparator.comparing(Composer::neededWithJob)
            .thenComparing(line -> line.atStake().job())
            .thenComparing(ChecklistLine::expected)
            .reversed()
            .thenComparing(ChecklistLine::id);

    private static final Comparator<ChecklistLine> WALK_AROUND =
            Comparator.<ChecklistLine, Stop>comparing(line -> line.template().stop())
                    .thenComparing(MOST_AT_STAKE);

    /** Copies the templates. */
    public Composer {
        templates = List.copyOf(templates);
    }

    /** The same without the lines of these ids; others move up. */
    public Composer without(Set<String> ids) {
        return new Composer(
                templates.stream().filter(each -> !ids.contains(each.id())).toList(), pageOne, walkAwaySigns);
    }

    /** What kind of machine the shopper will look at. */
    public enum Looking {
        NEW,
        USED,
        BOTH
    }

    /**
     * The list, each place in walk-around order. Page one takes the lines with the most at stake: what costs a
     * must-have its job first, then what costs a job, then dollars times chance times relevance. Signs to walk away go
     * to their box, those of every tractor first, for they are what can kill; what the box cannot hold goes to the
     * further sheet.
     */
    public List<ChecklistLine> compose(Stakes stakes, Quiz quiz, Beliefs beliefs, Looking looking) {
        List<ChecklistLine> candidates = new ArrayList<>();
        for (LineTemplate template : templates) {
            List<Because> because = because(template, stakes, quiz, beliefs, looking);
            if (!because.isEmpty()) {
                candidates.add(line(template, because, stakes, quiz));
            }
        }
        return placed(candidates, pageOne, walkAwaySigns);
    }

    /**
     * The same lines with their places given anew, for a page that holds so many lines and signs. Paper knows how much
     * it holds only when the words are set; it asks again here, so that one rule alone decides what comes first.
     *
     * @param lines   in any order and with any places
     * @param pageOne how many lines page one holds
     * @param signs   how many signs its box holds
     */
    public static List<ChecklistLine> placed(List<ChecklistLine> lines, int pageOne, int signs) {
        List<ChecklistLine> candidates = lines.stream().sorted(MOST_AT_STAKE).toList();
        Set<String> boxed = first(
                candidates.stream()
                        .filter(each -> each.template().walkAway())
                        .sorted(Comparator.comparing(each -> each.template().audience() != Audience.EVERYONE)),
                signs);
        Set<String> onPageOne = first(candidates.stream().filter(each -> !each.template().walkAway()), pageOne);
        return candidates.stream()
                .map(each -> each.at(place(each.id(), boxed, onPageOne)))
                .sorted(Comparator.comparing(ChecklistLine::place).thenComparing(WALK_AROUND))
                .toList();
    }

    private static Place place(String id, Set<String> signs, Set<String> lines) {
        if (signs.contains(id)) {
            return Place.WALK_AWAY;
        }
        return lines.contains(id) ? Place.PAGE_ONE : Place.FURTHER_SHEET;
    }

    private static Set<String> first(Stream<ChecklistLine> lines, int most) {
        var ids = new HashSet<String>();
        lines.limit(most).forEach(line -> ids.add(line.id()));
        return ids;
    }

    private static boolean neededWithJob(ChecklistLine line) {
        return line.atStake().job() && isNeeded(line.because());
    }

    private static boolean isNeeded(List<Because> because) {
        return because.stream().anyMatch(why -> why instanceof Because.YourWork work && work.requirement().must());
    }

    private static ChecklistLine line(
            LineTemplate template, List<Because> because, Stakes stakes, Quiz quiz) {
        AtStake atStake = template.feature().map(stakes::of).map(template::atStakeOver).orElse(template.atStake());
        double relevance = isNeeded(because) ? stakes.weights().must() : template.touchedThrough()
                .map(topic -> stakes.weight(new FeatureId(topic.value())))
                .orElse(stakes.weights().must());
        double chance = template.touchedThrough().map(topic -> chance(topic, quiz, because)).orElse(EVEN_CHANCE);
        double expected = atStake.money().middle().toDollars() * chance * relevance;
        return new ChecklistLine(template, atStake, expected, because, Place.FURTHER_SHEET);
    }

    /** Certain where the shopper is wrong, even where unsure, else what the question's prior says. */
    private static double chance(TopicId topic, Quiz quiz, List<Because> because) {
        if (because.stream().anyMatch(Because.WrongBelief.class::isInstance)) {
            return 1;
        }
        return quiz.questions().stream()
                .filter(question -> question.isAbout(topic))
                .mapToDouble(QuizQuestion::wrong)
                .max()
                .orElse(EVEN_CHANCE);
    }

    private static List<Because> because(
            LineTemplate template, Stakes stakes, Quiz quiz, Beliefs beliefs, Looking looking) {
        List<Because> because = new ArrayList<>();
        template.touchedThrough().ifPresent(topic -> {
            addBeliefs(topic, quiz, beliefs, because);
        });
        work(template, stakes.relevance()).ifPresent(each -> because.add(new Because.YourWork(each)));
        switch (template.audience()) {
            case EVERYONE -> because.add(new Because.ForEveryone());
            case USED -> {
                if (looking != Looking.NEW) {
                    because.add(new Because.UsedMachine());
                }
            }
            case NEW -> {
                if (looking != Looking.USED) {
                    because.add(new Because.NewMachine());
                }
            }
            case FEATURE -> {
                // only through work or belief
            }
        }
        return because;
    }

    /** Through the feature, or through what the line's number is a number of; a must-have rather than a wish. */
    private static Optional<Requirement> work(LineTemplate template, Relevance relevance) {
        Optional<Requirement> feature =
                template.touchedThrough().flatMap(topic -> relevance.requirement(new FeatureId(topic.value())));
        Optional<Requirement> number = template.number().flatMap(kind -> relevance.requirement(kind.capability()));
        return feature.filter(Requirement::must).or(() -> number.filter(Requirement::must))
                .or(() -> feature).or(() -> number);
    }

    private static void addBeliefs(TopicId topic, Quiz quiz, Beliefs beliefs, List<Because> to) {
        quiz.outcomes(beliefs).forEach((question, outcome) -> {
            if (question.isAbout(topic)) {
                Belief belief = beliefs.find(question.id()).orElse(Belief.NOT_SURE);
                if (outcome == Outcome.WRONG) {
                    belief.option().ifPresent(
                            option -> to.add(new Because.WrongBelief(question, option, belief.sure())));
                } else if (outcome == Outcome.UNSURE) {
                    to.add(new Because.Unsure(question));
                }
            }
        });
    }
}
