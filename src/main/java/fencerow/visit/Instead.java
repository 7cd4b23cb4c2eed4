package fencerow.visit;

import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.needs.Answers;
import fencerow.needs.Job;
import fencerow.needs.Questionnaire;
import fencerow.needs.Requirement;
import fencerow.terms.JobId;
import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * A job done without the tractor, beside what owning takes. Yearly money is no purchase: it never enters a plan.
 *
 * @param job    the job
 * @param way    how it is done instead
 * @param yearly what that costs a year
 * @param owning what the tractor takes for the job; empty where there is no tractor, or none that can be made ready
 */
public record Instead(Job job, Job.OtherWay way, PriceRange yearly, Optional<Owning> owning) {
    /**
     * What the job's part of a plan costs, and when that has paid.
     *
     * @param price what the plan costs more for the job's sake; nothing where all of it is there or serves other jobs
     * @param years until the other way has cost as much; empty where nothing is to be bought or the way may be free
     */
    public record Owning(PriceRange price, Optional<Years> years) {}

    /**
     * Whole years, each begun year counted.
     *
     * @param fewest at the lowest price and the dearest other way
     * @param most   at the highest price and the cheapest other way
     */
    public record Years(long fewest, long most) {
        /** Simple payback: price over yearly cost. Empty where there is no price, or a way may cost nothing. */
        static Optional<Years> of(PriceRange price, PriceRange yearly) {
            return price.isZero() || yearly.low().cents() == 0
                    ? Optional.empty()
                    : Optional.of(new Years(
                            years(price.low().cents(), yearly.high().cents()),
                            years(price.high().cents(), yearly.low().cents())));
        }

        private static long years(long price, long yearly) {
            return Math.max(1, (price + yearly - 1) / yearly);
        }
    }

    /** Every way of every job asked for: first those that somebody is paid for, the cheapest before the others. */
    static List<Instead> of(Questionnaire questionnaire, Answers answers, Ranking ranking, Match match) {
        List<Instead> all = new ArrayList<>();
        for (Job job : jobs(questionnaire, ranking.needs().jobs())) {
            Optional<PriceRange> price = job.yearly().isEmpty()
                    ? Optional.empty()
                    : ranking.whatIf().partOfPlan(match, forTheSakeOf(job, questionnaire, answers, ranking));
            all.addAll(ways(job, price));
        }
        return List.copyOf(all);
    }

    /** The same of these jobs, without a tractor to own. */
    static List<Instead> elsewhere(Questionnaire questionnaire, Set<JobId> jobs) {
        return jobs(questionnaire, jobs).stream().flatMap(job -> ways(job, Optional.empty()).stream()).toList();
    }

    /** The first way of each job. */
    public static List<Instead> first(List<Instead> all) {
        Set<JobId> seen = new HashSet<>();
        return all.stream().filter(each -> seen.add(each.job().id())).toList();
    }

    private static List<Instead> ways(Job job, Optional<PriceRange> price) {
        return job.yearly().entrySet().stream()
                .map(way -> new Instead(job, way.getKey(), way.getValue(),
                        price.map(owned -> new Owning(owned, Years.of(owned, way.getValue())))))
                .sorted(Comparator.comparing((Instead each) -> each.way() == Job.OtherWay.OTHER_MACHINE)
                        .thenComparing(each -> each.yearly().middle())
                        .thenComparing(Instead::way))
                .toList();
    }

    private static List<Job> jobs(Questionnaire questionnaire, Set<JobId> wanted) {
        return questionnaire.jobs().stream().filter(job -> wanted.contains(job.id())).toList();
    }

    /** What would not be asked for if the job were done another way. */
    private static List<Requirement> forTheSakeOf(
            Job job, Questionnaire questionnaire, Answers answers, Ranking ranking) {
        Set<JobId> elsewhere = new HashSet<>(ranking.needs().hired());
        elsewhere.add(job.id());
        List<Requirement> left = questionnaire.needs(answers, elsewhere).requirements();
        return ranking.needs().requirements().stream().filter(each -> !left.contains(each)).toList();
    }
}
