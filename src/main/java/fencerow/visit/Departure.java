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
import fencerow.terms.ItemId;
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
        for (Match match : showroom.ranking(visit.told(Optional.empty())).matches()) {
            tally = tally.plus(count(showroom, match));
        }
        return tally;
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
        if (match.finding() instanceof Finding.Infeasible infeasible) {
            Optional<Blocked> first = infeasible.why().stream().findFirst();
            if (first.isPresent()) {
                tally = tally.plus(new Counter(Kind.UNIT_SHORT, unit, first.get().of().value()), 1);
            }
        }
        for (Verify verify : match.verify()) {
            if (verify.flips()) {
                tally = tally.plus(new Counter(Kind.UNIT_UNCHECKED, unit, verify.feature().value()), 1);
            }
        }
        Optional<ItemId> missing = match.verdict() == Verdict.READY_ONCE_EQUIPPED
                ? match.findPlan().flatMap(plan -> onlyAddOn(showroom, plan))
                : Optional.empty();
        return missing.isPresent() ? tally.plus(Counter.of(Kind.WOULD_READY, missing.get().value()), 1) : tally;
    }

    /**
     * The add-on without which a unit would be ready, fitted ahead. Attachments and ballast are not looked at: they are
     * bought with any tractor and not fitted to one.
     */
    private static Optional<ItemId> onlyAddOn(Showroom showroom, Plan plan) {
        var addOns = plan.lines().stream()
                .filter(line -> !line.price().isZero())
                .filter(line -> showroom.catalogue().findItem(line.item()).filter(AddOn.class::isInstance).isPresent())
                .toList();
        return addOns.size() == 1 && addOns.get(0).count() == 1
                ? Optional.of(addOns.get(0).item())
                : Optional.empty();
    }
}
