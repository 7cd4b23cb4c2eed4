package fencerow.match;

import fencerow.stock.Unit;
import fencerow.terms.Money;
import java.util.List;
import java.util.Optional;

/**
 * One unit held against one shopper's needs. Immutable; reasons are worked out when first asked for. May be used from
 * any thread.
 */
public final class Match {
    private final Unit unit;
    private final Verdict verdict;
    private final Judgement judgement;
    private final ReadyPrice price;
    private final Money middle;
    private final Optional<Money> overBudget;
    private final long standing;

    Match(Unit unit, Verdict verdict, Judgement judgement, ReadyPrice price, Optional<Money> overBudget) {
        this.unit = unit;
        this.verdict = verdict;
        this.judgement = judgement;
        this.price = price;
        this.middle = price.middle();
        this.overBudget = overBudget;
        long over = overBudget.isPresent() ? 1L << Integer.SIZE : 0;
        this.standing = (over - judgement.mustsMet()) * 101 + (100 - judgement.percent());
    }

    /** Its place among others of its verdict, lower first, as one number: by budget, must-haves met, score. */
    long standing() {
        return standing;
    }

    /** The unit. */
    public Unit unit() {
        return unit;
    }

    /** What it comes to. */
    public Verdict verdict() {
        return verdict;
    }

    /** How or why, taking every unverified piece at its worst. */
    public Finding finding() {
        return judgement.finding();
    }

    /** Unverified pieces that matter: those the verdict hangs on first, then most money first. */
    public List<Verify> verify() {
        return judgement.verify();
    }

    /** Whether more pieces are unverified than can be tried one by one, so that bounds were used. */
    public boolean bracketed() {
        return judgement.isBracketed();
    }

    /** How many must-haves can be met together: {@link Score#mustsMet}, known at once. */
    int mustsMet() {
        return judgement.mustsMet();
    }

    /** {@link Score#percent}, known at once. */
    int percent() {
        return judgement.percent();
    }

    /** How well it suits. */
    public Score score() {
        return judgement.score();
    }

    /** Ready to work, where there is a plan; without one the plan's part is nothing. */
    public ReadyPrice price() {
        return price;
    }

    /**
     * What it costs ready to work when some must-haves are not asked for; empty if it still cannot be made ready.
     *
     * @param requirements the must-haves' places in the needs
     */
    Optional<ReadyPrice> priceWithout(List<Integer> requirements) {
        return judgement
                .priceWithout(requirements)
                .map(plan -> new ReadyPrice(price.asking(), price.catchUp(), plan));
    }

    /** The middle of {@link #price}. */
    Money middle() {
        return middle;
    }

    /** By how much the middle of the ready-to-work price is over the budget. */
    public Optional<Money> overBudget() {
        return overBudget;
    }

    /** The cheapest plan, where the unit can be made ready. */
    public Optional<Plan> findPlan() {
        return judgement.isFeasible() ? Optional.of(judgement.plan()) : Optional.empty();
    }
}
