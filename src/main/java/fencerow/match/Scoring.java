package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;

/**
 * Works out the score of one problem.
 *
 * @param feasible whether the must-haves switched on can be met together
 */
record Scoring(Problem problem, Needs needs, Predicate<boolean[]> feasible) {

    /** The score; wishes are judged by what is known to be there. */
    Score score(boolean isFeasible) {
        List<Requirement> met = new ArrayList<>();
        List<Requirement> unmet = new ArrayList<>();
        long weightMet = 0;
        long weightAll = 0;
        List<Setup.Row> rows = problem.setup().rows();
        for (int r = 0; r < rows.size(); r++) {
            if (rows.get(r).role() == Setup.Role.WISH) {
                Requirement wish = needs.requirements().get(rows.get(r).requirement());
                boolean holds = problem.base()[r] >= rows.get(r).bound();
                (holds ? met : unmet).add(wish);
                weightMet += holds ? wish.weight() : 0;
                weightAll += wish.weight();
            }
        }
        int percent = weightAll == 0 ? 100 : (int) (100 * weightMet / weightAll);
        int all = needs.musts().size();
        return new Score(isFeasible ? all : mostTogether(), all, percent, met, unmet);
    }

    /** How many must-haves hold together when each is kept, in the order asked, if it still can be. */
    private int mostTogether() {
        boolean[] kept = new boolean[needs.requirements().size()];
        int count = 0;
        for (int i = 0; i < kept.length; i++) {
            kept[i] = needs.requirements().get(i).must();
            if (kept[i] && feasible.test(kept)) {
                count++;
            } else {
                kept[i] = false;
            }
        }
        return count;
    }
}
