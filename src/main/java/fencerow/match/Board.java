package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Availability;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** One shopper's needs laid out against a lot. Confined to one thread. */
final class Board {
    private final Lot lot;
    private final Needs needs;
    private final List<Kind> kinds;
    private final List<List<Sections.Placed>> sections;

    /** Lays out the needs; {@code solved} holds parts answered before. */
    Board(Lot lot, Needs needs, Solved solved) {
        this.lot = lot;
        this.needs = needs;
        var layout = new Layout(lot, needs);
        this.kinds = IntStream.range(0, lot.varieties().size())
                .mapToObj(place -> new Kind(layout, lot.varieties().get(place), place))
                .toList();
        this.sections = Sections.of(lot, layout, kinds, solved);
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
        int[] facts = lot.facts(place);
        List<Sections.Placed> own = sections.get(lot.varietyOf(place));
        List<Section.Answer> answers = new ArrayList<>(own.size());
        for (int s = 0; s < own.size(); s++) {
            answers.add(own.get(s).section().answer(facts));
        }
        var judgement =
                new Judgement(kind, facts, new Assortment(lot.index().catalogue(), unit, needs), own, answers);
        Verdict verdict = verdict(unit, judgement);
        var price = new ReadyPrice(lot.price(place), lot.catchUp(place), judgement.price());
        return new Match(unit, verdict, judgement, price, overBudget(price, verdict));
    }

    private static Verdict verdict(Unit unit, Judgement judgement) {
        if (!judgement.isFeasible()) {
            return judgement.isHopeful() ? Verdict.LOOK_CLOSER : Verdict.CANNOT_BE_MADE_READY;
        }
        if (unit.availability() == Availability.ORDERABLE) {
            return Verdict.TO_ORDER;
        }
        return judgement.price().isZero() ? Verdict.READY : Verdict.READY_ONCE_EQUIPPED;
    }

    private Optional<Money> overBudget(ReadyPrice price, Verdict verdict) {
        if (!verdict.hasPlan()) {
            return Optional.empty();
        }
        return needs.budget().map(price.middle()::minus).filter(over -> over.cents() > 0);
    }
}
