package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import fencerow.terms.UnitId;
import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/**
 * All units held against one shopper's needs, best first: by verdict, within budget before over it, score falling,
 * ready-to-work price rising, id. Immutable in effect; may be used from any thread.
 */
public final class Ranking {
    private static final Comparator<Match> BEST_FIRST = Comparator.comparing(Match::verdict)
            .thenComparingLong(Match::standing)
            .thenComparingLong(match -> match.middle().cents())
            .thenComparing(match -> match.unit().id());

    private final Needs needs;
    private final List<Match> matches;
    private final List<Match> ready;
    private final Index index;
    private final Solved solved;

    /** Matches and ranks, with parts answered before. */
    Ranking(Lot lot, Needs needs, Solved solved) {
        this.needs = needs;
        this.matches = new Board(lot, needs, solved)
                .matches().stream().sorted(BEST_FIRST).toList();
        this.ready = matches.stream().filter(match -> match.verdict().hasPlan()).toList();
        this.index = lot.index();
        this.solved = solved;
    }

    /** Matches and ranks. */
    public static Ranking of(Matcher matcher, Collection<Unit> units, Needs needs) {
        return of(matcher.lot(units), needs);
    }

    /** Matches and ranks. */
    public static Ranking of(Lot lot, Needs needs) {
        return new Ranking(lot, needs, Solved.nothing());
    }

    /** Matches and ranks for other needs or other units; what comes out as it did in this ranking is not redone. */
    public Ranking next(Lot lot, Needs others) {
        // What was solved is told apart by places in the catalogue.
        return new Ranking(lot, others, lot.index() == index ? solved.next() : Solved.nothing());
    }

    /** What was asked. */
    public Needs needs() {
        return needs;
    }

    /** All, best first. */
    public List<Match> matches() {
        return matches;
    }

    /** The first few units, best first. */
    List<UnitId> first(int most) {
        return matches.stream().limit(most).map(match -> match.unit().id()).toList();
    }

    /** Matches with a plan, best first. */
    public List<Match> ready() {
        return ready;
    }

    /** The lowest ready-to-work price, middle, among units with a plan. */
    public Optional<Money> cheapest() {
        return ready.stream().map(Match::middle).min(Comparator.naturalOrder());
    }

    /** What would change the answer. */
    public WhatIf whatIf() {
        return new WhatIf(this);
    }

    /** A unit with a plan that suits at least as well for no more, and better or for less; the best such. */
    public Optional<Match> beatenBy(Match match) {
        return ready.stream().filter(other -> beats(other, match)).findFirst();
    }

    private static boolean beats(Match other, Match match) {
        int price = other.middle().compareTo(match.middle());
        int score = Integer.compare(other.percent(), match.percent());
        return match.verdict().hasPlan() && price <= 0 && score >= 0 && (price < 0 || score > 0);
    }
}
