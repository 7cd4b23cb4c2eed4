package fencerow.match;

import java.util.List;

/**
 * What can matter to a problem: rows that may be short, and items that help those. A row that holds whatever useful
 * items take from it is left out, and so is an item that helps no row left. Confined to one call.
 */
final class Relevance {
    private final Setup setup;
    private final Links links;
    private final long[] worst;
    private final long[] best;
    private final long[] taken;
    private final boolean[] outOfReach;
    private final boolean[] useful;
    private final boolean[] relevant;
    private final boolean[] open;

    private Relevance(Setup setup, Links links, long[] worst, long[] best) {
        this.setup = setup;
        this.links = links;
        this.worst = worst;
        this.best = best;
        for (int limit : links.limits()) {
            worst[limit] = Math.max(worst[limit], 0);
            best[limit] = Math.max(best[limit], 0);
        }
        this.taken = new long[worst.length];
        this.outOfReach = new boolean[setup.items().count()];
        this.useful = new boolean[outOfReach.length];
        this.relevant = new boolean[worst.length];
        this.open = new boolean[worst.length];
    }

    /** Looks through a problem. */
    static Relevance of(Problem problem, Links links) {
        long[] best = problem.headroom().clone();
        problem.pieces().forEach(piece -> Spread.most(piece.states()).addTo(best));
        return of(problem.setup(), links, problem.headroom().clone(), best);
    }

    /**
     * Looks through all problems of a setup.
     *
     * @param worst the least headroom of each row in any of them; taken over
     * @param best  the most; taken over
     */
    static Relevance of(Setup setup, Links links, long[] worst, long[] best) {
        var relevance = new Relevance(setup, links, worst, best);
        relevance.putAsideItemsOutOfReach();
        relevance.follow();
        return relevance;
    }

    /** Items that something they need keeps out of reach, and then items that need those, until nothing changes. */
    private void putAsideItemsOutOfReach() {
        boolean changed = true;
        while (changed) {
            changed = false;
            for (int row : links.owned()) {
                if (best[row] < 0) {
                    int owner = setup.rows().get(row).whose();
                    if (canBeHad(owner) && !isAttainable(row)) {
                        outOfReach[owner] = true;
                        changed = true;
                    }
                }
            }
        }
    }

    private boolean canBeHad(int item) {
        return setup.items().most()[item] > 0 && !outOfReach[item];
    }

    /** Whether some count of items, what those need left aside, could make the row hold. */
    private boolean isAttainable(int row) {
        long reach = best[row];
        Sparse change = setup.rows().get(row).change();
        for (int k = 0; k < change.size(); k++) {
            int item = change.places()[k];
            if (change.amounts()[k] > 0 && canBeHad(item)) {
                reach += change.amounts()[k] * setup.items().most()[item];
            }
        }
        return reach >= 0;
    }

    private void follow() {
        for (int must : links.musts()) {
            lookAt(must);
        }
    }

    /** Takes the row in if it could be short; then whatever helps it matters too. */
    private void lookAt(int row) {
        if (relevant[row] || worst[row] >= taken[row]) {
            return;
        }
        Setup.Row looked = setup.rows().get(row);
        boolean sleeps = looked.isNeed() && !useful[looked.whose()];
        if (sleeps || looked.role() == Setup.Role.WISH) {
            return;
        }
        relevant[row] = true;
        open[row] = isAttainable(row);
        if (open[row]) {
            Sparse change = looked.change();
            for (int k = 0; k < change.size(); k++) {
                if (change.amounts()[k] > 0) {
                    use(change.places()[k]);
                }
            }
        }
    }

    private void use(int item) {
        if (useful[item] || !canBeHad(item)) {
            return;
        }
        useful[item] = true;
        for (int row : links.lowers()[item]) {
            long takes = Math.max(0, -setup.rows().get(row).change().at(item));
            taken[row] += takes * setup.items().most()[item];
            lookAt(row);
        }
        for (int row : links.needs()[item]) {
            lookAt(row);
        }
    }

    /** Whether the row could be short. */
    boolean isRelevant(int row) {
        return relevant[row];
    }

    /** Whether the row could be short and something could make it hold. */
    boolean isOpen(int row) {
        return open[row];
    }

    /** Whether the item could help. */
    boolean isUseful(int item) {
        return useful[item];
    }
}
