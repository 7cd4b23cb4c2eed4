package fencerow.backoffice.document;

import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.match.WhatIf;
import fencerow.needs.Job;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.terms.JobId;
import fencerow.terms.PriceRange;
import fencerow.visit.Instead;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.InsteadWords;
import fencerow.wording.Phrases;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * What {@code match} prints: every unit held against one shopper's answers.
 *
 * @param language of the sentences, as a BCP 47 tag
 * @param needs    what the answers ask for, in the order of the questions
 * @param budget   dollars the shopper means to spend, made ready; null where not told
 * @param units    best first: by verdict, within budget before over it, must-haves met falling, score falling,
 *                 price rising (ready-to-work middle; out the door and catch-up where there is no plan), id
 * @param unitsAll how many units were held against the needs, those not shown counted too
 * @param changes  what doing without one must-have would bring; must-haves that bring nothing are left out
 * @param budgetRaise what a higher budget would bring; null where there is no budget or all that is ready is within it
 * @param pair     the two must-haves without which most of the first ten become ready; null unless nothing is ready and
 *                 no single must-have is to blame
 * @param otherWays how jobs asked for can be done without the tractor, and what that costs a year
 * @param cautions that go with the jobs asked for
 */
public record MatchDocument(
        String language,
        List<NeedEntry> needs,
        Optional<BigDecimal> budget,
        List<UnitEntry> units,
        int unitsAll,
        List<ChangeEntry> changes,
        Optional<BudgetEntry> budgetRaise,
        Optional<PairEntry> pair,
        List<OtherWayEntry> otherWays,
        List<CautionEntry> cautions) {
    private static final int PAIR_UNITS = 10;

    /**
     * What doing without one must-have would bring.
     *
     * @param dropped id of the must-have
     * @param gained  ids of units that become ready, best first
     * @param saves   dollars by which the lowest ready-to-work price falls; null where it does not
     * @param reason  that, as a sentence
     */
    public record ChangeEntry(String dropped, List<String> gained, Optional<BigDecimal> saves, String reason) {
        private static ChangeEntry of(WhatIf.Change change, Phrases phrases) {
            return new ChangeEntry(
                    change.dropped().id(),
                    ids(change.gained()),
                    change.saves().map(Numbers::dollars),
                    phrases.change(change));
        }
    }

    /**
     * What more money would bring.
     *
     * @param raise  the least dollars more that bring any unit within the budget
     * @param gained ids of ready units that are over it, best first
     * @param reason that, as a sentence
     */
    public record BudgetEntry(BigDecimal raise, List<String> gained, String reason) {
        private static BudgetEntry of(WhatIf.Budget budget, Phrases phrases) {
            return new BudgetEntry(Numbers.dollars(budget.raise()), ids(budget.gained()), phrases.change(budget));
        }
    }

    /**
     * What doing without two must-haves would bring.
     *
     * @param dropped ids of the must-haves
     * @param gained  ids of units that become ready, best first
     * @param reason  that, as a sentence
     */
    public record PairEntry(List<String> dropped, List<String> gained, String reason) {
        private static PairEntry of(WhatIf.Pair pair, Phrases phrases) {
            return new PairEntry(
                    List.of(pair.dropped().id(), pair.alsoDropped().id()), ids(pair.gained()), phrases.change(pair));
        }
    }

    private static List<String> ids(List<Match> matches) {
        return matches.stream().map(match -> match.unit().id().value()).toList();
    }

    /**
     * A way to get a job done without the tractor.
     *
     * @param job    its id
     * @param way    {@code hire}, {@code contract} or {@code other-machine}
     * @param low    dollars a year
     * @param high   likewise
     * @param reason that, as a sentence
     */
    public record OtherWayEntry(String job, String way, BigDecimal low, BigDecimal high, String reason) {
        private static OtherWayEntry of(Instead way, Phrases phrases) {
            return new OtherWayEntry(
                    way.job().id().value(),
                    way.way().id(),
                    Numbers.dollars(way.yearly().low()),
                    Numbers.dollars(way.yearly().high()),
                    new InsteadWords(phrases).way(way));
        }
    }

    /**
     * Writes down the ranking of a visit.
     *
     * @param most the most units to write down
     */
    public static MatchDocument of(Showroom showroom, Visit visit, Ranking ranking, Phrases phrases, int most) {
        Needs needs = ranking.needs();
        List<Match> shown = ranking.matches().stream().limit(most).toList();
        List<Job> jobs = jobs(showroom, needs);
        return new MatchDocument(
                phrases.texts().language(),
                needs.requirements().stream()
                        .map(requirement -> NeedEntry.of(requirement, showroom.catalogue(), phrases))
                        .toList(),
                needs.budget().map(Numbers::dollars),
                shown.stream()
                        .map(match -> UnitEntry.of(match, ranking, showroom, visit, phrases))
                        .toList(),
                ranking.matches().size(),
                ranking.whatIf().changes().stream()
                        .map(change -> ChangeEntry.of(change, phrases))
                        .toList(),
                ranking.whatIf().budget().map(budget -> BudgetEntry.of(budget, phrases)),
                ranking.whatIf().pair(PAIR_UNITS, () -> false).map(pair -> PairEntry.of(pair, phrases)),
                showroom.elsewhere(jobs(needs)).stream().map(way -> OtherWayEntry.of(way, phrases)).toList(),
                cautions(jobs, phrases));
    }

    /** The jobs asked for, and those the shopper will have done another way, in the order of the content. */
    private static List<Job> jobs(Showroom showroom, Needs needs) {
        Set<JobId> wanted = jobs(needs);
        return showroom.questionnaire().jobs().stream().filter(job -> wanted.contains(job.id())).toList();
    }

    private static Set<JobId> jobs(Needs needs) {
        Set<JobId> wanted = new LinkedHashSet<>(needs.hired());
        wanted.addAll(needs.jobs());
        return wanted;
    }

    private static List<CautionEntry> cautions(List<Job> jobs, Phrases phrases) {
        return jobs.stream()
                .flatMap(job -> job.cautions().stream())
                .distinct()
                .map(id -> new CautionEntry(id, phrases.texts().get("caution." + id)))
                .toList();
    }
}
