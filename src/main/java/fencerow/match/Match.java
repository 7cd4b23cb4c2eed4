package fencerow.match;

import fencerow.stock.Unit;
import fencerow.terms.Money;
import java.util.List;
import java.util.Optional;

/**
 * One unit held against one shopper's needs.
 *
 * @param unit      the unit
 * @param verdict   what it comes to
 * @param finding   how or why, taking every unverified piece at its worst
 * @param verify    unverified pieces that matter, most money first
 * @param bracketed whether more pieces are unverified than can be tried one by one, so that bounds were used
 * @param score     how well it suits
 * @param price     ready to work, where there is a plan; without it the plan's part is zero
 * @param overBudget by how much the middle of the ready-to-work price is over the budget
 */
public record Match(
        Unit unit,
        Verdict verdict,
        Finding finding,
        List<Verify> verify,
        boolean bracketed,
        Score score,
        ReadyPrice price,
        Optional<Money> overBudget) {
    /** Copies the list. */
    public Match {
        verify = List.copyOf(verify);
    }

    /** The cheapest plan, where the unit can be made ready. */
    public Optional<Plan> findPlan() {
        return finding instanceof Finding.Feasible feasible ? Optional.of(feasible.best()) : Optional.empty();
    }
}
