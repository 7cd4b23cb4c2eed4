package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Availability;
import fencerow.stock.Condition;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.ItemId;
import fencerow.terms.ModelId;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * One shopper's needs laid out against the catalogue, for matching many units. Units of one kind whose facts that
 * matter are equal share one judgement. Confined to one thread.
 */
final class Board {
    private final Helpful.Index index;
    private final Needs needs;
    private final Helpful helpful;
    private final Map<KindKey, Kind> kinds = new HashMap<>();
    private final Map<JudgementKey, Judgement> judgements = new HashMap<>();

    /** What makes units one kind: everything but facts and price that matching looks at. */
    private record KindKey(ModelId model, Condition condition, Availability availability, Set<ItemId> bundled) {}

    private record JudgementKey(KindKey kind, List<Fact> facts) {}

    Board(Helpful.Index index, Needs needs) {
        this.index = index;
        this.needs = needs;
        this.helpful = Helpful.of(index, needs);
    }

    /** One unit held against the needs. */
    Match match(Unit unit) {
        var key = new KindKey(unit.model().id(), unit.condition(), unit.availability(), unit.bundled());
        Kind kind = kinds.computeIfAbsent(key, each -> new Kind(index, helpful, unit, needs));
        List<Fact> facts = kind.facts(unit);
        Judgement judgement = judgements.computeIfAbsent(
                new JudgementKey(key, facts),
                each -> Judgement.of(kind.problem(facts), needs, new Assortment(index.catalogue(), unit, needs)));
        Verdict verdict = verdict(unit, judgement);
        var price = new ReadyPrice(unit.price(), catchUp(unit), judgement.plan().price());
        return new Match(unit, verdict, judgement, price, overBudget(price, verdict));
    }

    private static Verdict verdict(Unit unit, Judgement judgement) {
        if (!judgement.isFeasible()) {
            return judgement.isHopeful() ? Verdict.LOOK_CLOSER : Verdict.CANNOT_BE_MADE_READY;
        }
        if (unit.availability() == Availability.ORDERABLE) {
            return Verdict.TO_ORDER;
        }
        return judgement.plan().isFree() ? Verdict.READY : Verdict.READY_ONCE_EQUIPPED;
    }

    private PriceRange catchUp(Unit unit) {
        return unit.catchUp().stream()
                .flatMap(note -> index.catalogue()
                        .prices()
                        .findLater(note, unit.model().machineClass())
                        .stream())
                .reduce(PriceRange.ZERO, PriceRange::plus);
    }

    private Optional<Money> overBudget(ReadyPrice price, Verdict verdict) {
        if (!verdict.hasPlan()) {
            return Optional.empty();
        }
        return needs.budget().map(price.middle()::minus).filter(over -> over.cents() > 0);
    }
}
