package fencerow.needs;

import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.Money;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.Relation;
import fencerow.terms.Threshold;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;

/**
 * The questions about the shopper's work, and what answers to them ask of a machine.
 *
 * @param questions in asking order
 * @param jobs      the jobs that can be asked for
 */
public record Questionnaire(List<Question> questions, List<Job> jobs) {
    /** The question whose amount is the budget. */
    public static final QuestionId BUDGET = new QuestionId("budget");
    /** The question whose amount is the yearly running time. */
    public static final QuestionId HOURS_A_YEAR = new QuestionId("hours-a-year");
    /** The question whose amount is the area mown. */
    public static final QuestionId MOWN_AREA = new QuestionId("mown-area");
    /** The question whose amount is the time there is for mowing. */
    public static final QuestionId MOW_TIME = new QuestionId("mow-time");

    /** Copies the lists. */
    public Questionnaire {
        questions = List.copyOf(questions);
        jobs = List.copyOf(jobs);
    }

    /** The question with the id. */
    public Optional<Question> find(QuestionId id) {
        return questions.stream().filter(question -> question.id().equals(id)).findFirst();
    }

    /**
     * The questions that apply to these answers, answered or not, in asking order. A job that an answer takes off the
     * tractor no longer brings up questions, except the one it was taken off by.
     */
    public List<Question> applying(Answers answers) {
        return applying(answers, Set.of());
    }

    /**
     * The same where the shopper will have more jobs done another way than their answers say.
     *
     * @param elsewhere those jobs
     */
    public List<Question> applying(Answers answers, Set<JobId> elsewhere) {
        return questions.stream()
                .filter(question -> {
                    Set<OptionId> off = takenOff(answers, question.id());
                    elsewhere.forEach(job -> off.add(new OptionId(job.value())));
                    return applies(question, answers, off);
                })
                .toList();
    }

    /** Whether the question applies to these answers. */
    boolean applies(Question question, Answers answers) {
        return applies(question, answers, takenOff(answers, question.id()));
    }

    /** The jobs that answers to questions other than this one take off the tractor. */
    private Set<OptionId> takenOff(Answers answers, QuestionId otherThan) {
        Set<OptionId> jobs = new LinkedHashSet<>();
        for (Question question : questions) {
            for (Question.Option option : picked(question, answers)) {
                if (!option.hires().isEmpty()
                        && !question.id().equals(otherThan)
                        && applies(question, answers, Set.of())) {
                    option.hires().forEach(job -> jobs.add(new OptionId(job.value())));
                }
            }
        }
        return jobs;
    }

    /** The first question that applies and has no answer. */
    public Optional<Question> nextInOrder(Answers answers) {
        return applying(answers).stream()
                .filter(question -> answers.find(question.id()).isEmpty())
                .findFirst();
    }

    private static boolean applies(Question question, Answers answers, Set<OptionId> takenOff) {
        return question.when().isEmpty()
                || question.when().entrySet().stream().anyMatch(condition -> condition.getValue().stream()
                        .filter(option -> !takenOff.contains(option))
                        .anyMatch(answers.chosen(condition.getKey())::contains));
    }

    /**
     * What the answers come to. Answers to questions that do not apply, and options that do not exist, ask for nothing;
     * the order of answering makes no difference.
     */
    public Needs needs(Answers answers) {
        return needs(answers, Set.of());
    }

    /**
     * The same where the shopper will have more jobs done another way than their answers say: these ask for nothing,
     * and neither do answers that were about them alone.
     *
     * @param elsewhere those jobs
     */
    public Needs needs(Answers answers, Set<JobId> elsewhere) {
        List<Question> applying = applying(answers, elsewhere);
        Set<JobId> hired = new LinkedHashSet<>(elsewhere);
        Set<ItemId> owned = new LinkedHashSet<>();
        for (Question question : applying) {
            for (Question.Option option : picked(question, answers)) {
                hired.addAll(option.hires());
                owned.addAll(option.owns());
            }
        }
        List<Requirement> requirements = new ArrayList<>();
        for (Question question : applying) {
            if (question.choose() == Question.Choose.JOBS) {
                addJobs(question, answers, hired, requirements);
            }
            for (Question.Option option : picked(question, answers)) {
                addRules(question, Optional.of(option.id()), option.rules(), answers, requirements);
            }
            addRules(question, Optional.empty(), question.rules(), answers, requirements);
        }
        return new Needs(requirements, owned, hired, budget(answers), hoursPerYear(answers));
    }

    private static List<Question.Option> picked(Question question, Answers answers) {
        List<OptionId> chosen = question.options().isEmpty() ? List.of() : answers.chosen(question.id());
        return chosen.stream().flatMap(option -> question.findOption(option).stream()).toList();
    }

    private void addJobs(Question question, Answers answers, Set<JobId> hired, List<Requirement> to) {
        List<OptionId> chosen = answers.chosen(question.id());
        for (Job job : jobs) {
            var option = new OptionId(job.id().value());
            if (chosen.contains(option) && !hired.contains(job.id())) {
                to.add(new Requirement(
                        question.id() + "/" + option,
                        Demand.flag(CapabilityId.does(job.id())),
                        true,
                        1,
                        new Because(question.id(), Optional.of(option), Optional.of(job.id()))));
            }
        }
    }

    private static void addRules(
            Question question, Optional<OptionId> option, List<Rule> rules, Answers answers, List<Requirement> to) {
        Optional<Amount> given = amount(question.id(), answers);
        for (int i = 0; i < rules.size(); i++) {
            Rule rule = rules.get(i);
            Optional<Threshold> threshold = threshold(rule.level(), given, answers);
            if (threshold.isPresent()) {
                String id = question.id() + option.map(o -> "/" + o).orElse("") + "/" + rule.of().value()
                        + (rule.relation() == Relation.AT_MOST ? "/most" : "") + (rules.size() > 1 ? "/" + i : "");
                add(new Requirement(
                        id,
                        new Demand(rule.of(), rule.relation(), threshold.get(), rule.in()),
                        rule.must(),
                        rule.weight(),
                        new Because(question.id(), option, Optional.empty())), to);
            }
        }
    }

    /** What one answer asks in several working states is one requirement. */
    private static void add(Requirement requirement, List<Requirement> to) {
        for (int i = 0; i < to.size(); i++) {
            if (to.get(i).isSameInOtherStates(requirement)) {
                to.set(i, to.get(i).and(requirement));
                return;
            }
        }
        to.add(requirement);
    }

    private static Optional<Threshold> threshold(Rule.Level level, Optional<Amount> given, Answers answers) {
        if (level instanceof Rule.Level.Fixed fixed) {
            return Optional.of(Threshold.of(fixed.amount()));
        }
        if (level instanceof Rule.Level.Answered answered) {
            return given.map(amount ->
                    Threshold.of(new Amount(amount.dimension(), amount.si() + answered.plus().si())));
        }
        if (level instanceof Rule.Level.Counterweight) {
            return given.map(Threshold.Counterweight::new);
        }
        if (level instanceof Rule.Level.Payload) {
            return given.map(Threshold.Payload::new);
        }
        return amount(MOWN_AREA, answers)
                .flatMap(area -> amount(MOW_TIME, answers).map(time -> new Threshold.MowingWidth(area, time)));
    }

    private static Optional<Amount> amount(QuestionId question, Answers answers) {
        return answers.find(question)
                .filter(Answer.Measured.class::isInstance)
                .map(answer -> ((Answer.Measured) answer).amount());
    }

    private static Optional<Money> budget(Answers answers) {
        return amount(BUDGET, answers)
                .filter(amount -> amount.dimension() == Dimension.MONEY)
                .map(amount -> Money.ofDollars(amount.si()));
    }

    private static OptionalDouble hoursPerYear(Answers answers) {
        return amount(HOURS_A_YEAR, answers)
                .filter(amount -> amount.dimension() == Dimension.TIME)
                .map(amount -> OptionalDouble.of(amount.si() / 3600))
                .orElse(OptionalDouble.empty());
    }
}
