package fencerow.match;

import fencerow.needs.Requirement;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges the wishes of one problem by what is known to be there: as the unit stands with what comes with it and what
 * the shopper has, so far as that works on it; then with the plan. Confined to one call.
 */
final class Wishes {
    private final Kind kind;
    private final Setup setup;
    private final long[] standing;
    private final int[] planned;

    /**
     * The wishes of a problem.
     *
     * @param planned how many of each item its plan has
     */
    Wishes(Kind kind, Problem problem, int[] planned) {
        this.kind = kind;
        this.setup = problem.setup();
        this.standing = problem.headroom();
        this.planned = planned;
    }

    /**
     * The score.
     *
     * @param missed must-haves that cannot be met with the others
     */
    Score score(int missed) {
        List<Requirement> met = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        long weightMet = 0;
        long weightAll = 0;
        List<Requirement> requirements = kind.layout().needs().requirements();
        int[] inUse = inUse(new int[planned.length]);
        for (int i = 0; i < requirements.size(); i++) {
            Requirement wish = requirements.get(i);
            if (wish.must()) {
                continue;
            }
            weightAll += wish.weight();
            if (holds(i, inUse)) {
                met.add(wish);
                weightMet += wish.weight();
            } else {
                open.add(i);
            }
        }
        List<Requirement> byPlan = new ArrayList<>();
        List<Requirement> unmet = new ArrayList<>();
        int[] inUseThen = open.isEmpty() ? inUse : inUse(planned);
        for (int wish : open) {
            (holds(wish, inUseThen) ? byPlan : unmet).add(requirements.get(wish));
        }
        int percent = weightAll == 0 ? 100 : (int) (100 * weightMet / weightAll);
        int all = requirements.size() - met.size() - byPlan.size() - unmet.size();
        return new Score(all - missed, all, percent, met, byPlan, unmet);
    }

    /** For each item how many are there: those bought, and those that cost nothing so far as what they need is met. */
    private int[] inUse(int[] bought) {
        int[] counts = bought.clone();
        for (int item : kind.free()) {
            boolean works = true;
            for (int need : kind.layout().links().needs()[item]) {
                works &= standing[need] + change(need, bought, false) >= 0;
            }
            counts[item] = works ? kind.layout().items().get(item).max() : bought[item];
        }
        return counts;
    }

    private long change(int row, int[] counts, boolean onlyGains) {
        Sparse change = setup.rows().get(row).change();
        long sum = 0;
        for (int k = 0; k < change.size(); k++) {
            long amount = change.amounts()[k];
            sum += onlyGains && amount < 0 ? 0 : amount * counts[change.places()[k]];
        }
        return sum;
    }

    private boolean holds(int wish, int[] counts) {
        for (int row : kind.layout().rowsOf(wish)) {
            if (standing[row] < 0 && standing[row] + change(row, counts, true) < 0) {
                return false;
            }
        }
        return true;
    }
}
