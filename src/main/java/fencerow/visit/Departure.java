package fencerow.visit;

import fencerow.desk.Counter;
import fencerow.desk.Counter.Kind;
import fencerow.desk.Tally;
import fencerow.match.Blocked;
import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.match.Verdict;
import fencerow.match.Verify;
import fencerow.quiz.Outcome;
import fencerow.stock.AddOn;
import fencerow.terms.CapabilityId;
import java.util.List;
import java.util.Optional;

/** What a visit that ends adds to the counts. Each count stands alone: the answers themselves are kept nowhere. */
public final class Departure {
    private Departure() {}

    /** The counts of one visit, in this showroom. Takes long: units are held against the needs. */
    public static Tally count(Showroom showroom, Visit visit) {
        Tally tally = Tally.NONE.plus(Counter.of(Kind.VISIT, ""), 1);
        for (var question : visit.answers().byQuestion().keySet()) {
            tally = tally.plus(Counter.of(Kind.ANSWERED, question.value()), 1);
        }
        for (var outcome : showroom.quiz().outcomes(visit.beliefs()).entrySet()) {
            tally = tally.plus(Counter.of(kind(outcome.getValue()), outcome.getKey().id().value()), 1);
        }
        if (showroom.needs(visit).musts().isEmpty()) {
            return tally;
        }
        // The shopper's own second quote is nobody's stock.
        List<Match> matches = showroom.ranking(visit.told(Optional.empty())).matches();
        for (Match match : matches) {
            tally = tally.plus(count(showroom, match));
        }
        return matches.stream().anyMatch(match -> match.verdict().hasPlan()) ? tally : tally.plus(unmet(matches));
    }

    /** What was short on one unit or another when nothing here can do the work. */
    private static Tally unmet(List<Match> matches) {
        Tally tally = Tally.NONE;
        for (CapabilityId of : matches.stream().flatMap(match -> findShort(match).stream()).distinct().toList()) {
            tally = tally.plus(Counter.of(Kind.UNMET, of.value()), 1);
        }
        return tally;
    }

    private static Optional<CapabilityId> findShort(Match match) {
        return match.finding() instanceof Finding.Infeasible infeasible
                ? infeasible.why().stream().findFirst().map(Blocked::of)
                : Optional.empty();
    }

    private static Kind kind(Outcome outcome) {
        return switch (outcome) {
            case RIGHT -> Kind.BELIEF_RIGHT;
            case WRONG -> Kind.BELIEF_WRONG;
            case UNSURE -> Kind.BELIEF_UNSURE;
        };
    }

    private static Tally count(Showroom showroom, Match match) {
        String unit = match.unit().id().value();
        Tally tally = Tally.NONE.plus(Counter.of(Kind.UNIT_ASKED, unit), 1);
        if (match.verdict().hasPlan()) {
            tally = tally.plus(Counter.of(Kind.UNIT_FITTED, unit), 1);
        }
        Optional<CapabilityId> lacking = findShort(match);
        if (lacking.isPresent()) {
            tally = tally.plus(new Counter(Kind.UNIT_SHORT, unit, lacking.get().value()), 1);
        }
        for (Verify verify : match.verify()) {
            if (verify.flips()) {
                tally = tally.plus(new Counter(Kind.UNIT_UNCHECKED, unit, verify.feature().value()), 1);
            }
        }
        List<Plan.Line> missing = match.verdict() == Verdict.READY_ONCE_EQUIPPED
                ? match.findPlan().map(plan -> addOns(showroom, plan)).orElse(List.of())
                : List.of();
        for (Plan.Line line : missing) {
            tally = tally.plus(new Counter(Kind.UNIT_LACKED, unit, line.item().value()), 1);
        }
        return missing.size() == 1 && missing.get(0).count() == 1
                ? tally.plus(new Counter(Kind.WOULD_READY, missing.get(0).item().value(), unit), 1)
                : tally;
    }

    /**
     * The add-ons to be fitted and paid. Attachments and ballast are not looked at: they are bought with any tractor
     * and not fitted to one ahead.
     */
    private static List<Plan.Line> addOns(Showroom showroom, Plan plan) {
        return plan.lines().stream()
                .filter(line -> !line.price().isZero())
                .filter(line -> showroom.catalogue().findItem(line.item()).filter(AddOn.class::isInstance).isPresent())
                .toList();
    }
}
