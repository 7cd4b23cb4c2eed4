package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Availability;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * One shopper's needs laid out against a lot. Units of one kind whose facts that matter are equal share one judgement.
 * Confined to one thread.
 */
final class Board {
    private final Lot lot;
    private final Needs needs;
    private final List<Kind> kinds;
    private final List<List<Section>> sections = new ArrayList<>();
    private final Map<Key, Judgement> judgements = new HashMap<>();

    /** Units with equal keys come out alike. */
    private record Key(int variety, int[] facts) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key key && variety == key.variety && Arrays.equals(facts, key.facts);
        }

        @Override
        public int hashCode() {
            return 31 * Arrays.hashCode(facts) + variety;
        }
    }

    /** Lays out the needs; {@code solved} holds parts answered before. */
    Board(Lot lot, Needs needs, Solved solved) {
        this.lot = lot;
        this.needs = needs;
        var layout = new Layout(lot, needs);
        this.kinds = lot.varieties().stream().map(variety -> new Kind(layout, variety)).toList();
        for (int v = 0; v < kinds.size(); v++) {
            sections.add(Section.of(kinds.get(v).anyOf(lot.seen(v)), layout.links(), solved));
        }
    }

    /** Every unit held against the needs, in the lot's order. */
    List<Match> matches() {
        List<Match> matches = new ArrayList<>(lot.units().size());
        for (int u = 0; u < lot.units().size(); u++) {
            matches.add(match(u));
        }
        return matches;
    }

    private Match match(int place) {
        Unit unit = lot.units().get(place);
        Kind kind = kinds.get(lot.varietyOf(place));
        var key = new Key(lot.varietyOf(place), kind.relevant(lot.facts(place)));
        Judgement judgement = judgements.computeIfAbsent(key, each -> judgement(kind, each, unit));
        Verdict verdict = verdict(unit, judgement);
        var price = new ReadyPrice(lot.price(place), lot.catchUp(place), judgement.plan().price());
        return new Match(unit, verdict, judgement, price, overBudget(price, verdict));
    }

    private Judgement judgement(Kind kind, Key key, Unit unit) {
        Problem problem = kind.problem(key.facts());
        return new Judgement(
                kind,
                problem,
                new Assortment(lot.index().catalogue(), unit, needs),
                Section.shares(sections.get(key.variety()), problem));
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

    private Optional<Money> overBudget(ReadyPrice price, Verdict verdict) {
        if (!verdict.hasPlan()) {
            return Optional.empty();
        }
        return needs.budget().map(price.middle()::minus).filter(over -> over.cents() > 0);
    }
}
