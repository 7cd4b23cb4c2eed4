package fencerow.wording;

import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.match.Ranking;
import fencerow.match.Verify;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Availability;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What speaks for a unit and what against it, each reason tied to something the shopper answered; the weightiest first.
 *
 * @param phrases sentences of the language
 */
public record Reasons(Phrases phrases) {
    private static final Comparator<Requirement> HEAVIEST = Comparator.comparingInt(Requirement::weight).reversed();

    /** What speaks for it. */
    public List<String> speaksFor(Match match, Needs needs) {
        List<String> reasons = new ArrayList<>();
        if (match.verdict().hasPlan()) {
            String work = phrases.work(needs);
            if (!work.isEmpty()) {
                reasons.add(say("does-work", Map.of("work", work)));
            }
        }
        wishes("has-wishes", match.score().met()).ifPresent(reasons::add);
        wishes("plans-wishes", match.score().planned()).ifPresent(reasons::add);
        if (match.verdict().hasPlan() && needs.budget().isPresent() && match.overBudget().isEmpty()) {
            reasons.add(say("within-budget", Map.of()));
        }
        if (match.unit().availability() == Availability.IN_STOCK) {
            reasons.add(say("on-the-lot", Map.of()));
        }
        return reasons;
    }

    /** What speaks against it. */
    public List<String> speaksAgainst(Match match, Ranking ranking) {
        List<String> reasons = new ArrayList<>();
        if (match.finding() instanceof Finding.Infeasible infeasible && !match.verdict().hasPlan()) {
            infeasible.why().stream()
                    .map(blocked -> phrases.blocked(blocked, match))
                    .distinct()
                    .forEach(reasons::add);
        }
        match.overBudget().ifPresent(over -> reasons.add(say("over-budget", Map.of("amount", phrases.money(over)))));
        wishes("lacks-wishes", match.score().unmet()).ifPresent(reasons::add);
        match.findPlan().ifPresent(plan -> addPlan(plan, reasons));
        if (match.unit().availability() != Availability.IN_STOCK) {
            reasons.add(say("waits", Map.of("availability", phrases.labels().availability(match.unit()))));
        }
        dearer(match, ranking).ifPresent(more -> reasons.add(say("dearer", Map.of("amount", phrases.money(more)))));
        return reasons;
    }

    private Optional<String> wishes(String key, List<Requirement> wishes) {
        List<String> names = wishes.stream()
                .sorted(HEAVIEST)
                .map(phrases::requirement)
                .map(phrases.labels()::inSentence)
                .distinct()
                .toList();
        return names.isEmpty() ? Optional.empty() : Optional.of(say(key, Map.of("wishes", phrases.series(names))));
    }

    private void addPlan(Plan plan, List<String> reasons) {
        if (!plan.isFree()) {
            reasons.add(say("to-equip", Map.of("range", phrases.range(plan.price()))));
        }
        plan.lines().stream()
                .filter(Plan.Line::stopgap)
                .forEach(line -> reasons.add(say("stopgap", Map.of(
                        "item", phrases.labels().inSentence(phrases.planLine(line))))));
    }

    private static Optional<Money> dearer(Match match, Ranking ranking) {
        return ranking.cheapest()
                .filter(lowest -> match.verdict().hasPlan())
                .map(lowest -> match.price().middle().minus(lowest))
                .filter(more -> more.cents() > 0);
    }

    /** What nobody has checked that matters, the weightiest first; one sentence where it is too much to tell apart. */
    public List<String> toCheck(Match match, int most) {
        List<Verify> all = match.verify();
        if (match.bracketed() || all.size() > most) {
            List<String> names = all.stream()
                    .limit(most)
                    .map(verify -> phrases.labels().feature(verify.feature()))
                    .map(phrases.labels()::inSentence)
                    .toList();
            return all.isEmpty()
                    ? List.of()
                    : List.of(say("unchecked", Map.of(
                            "features", phrases.series(names), "more", all.size() - names.size())));
        }
        return all.stream().map(phrases::verify).toList();
    }

    private String say(String key, Map<String, ?> words) {
        return phrases.texts().get("reason." + key, words);
    }
}
