package fencerow.match;

import fencerow.needs.Requirement;
import java.util.ArrayList;
import java.util.List;

/**
 * How well a unit suits, always with its parts.
 *
 * @param mustsMet must-haves that can be met together
 * @param mustsAll must-haves in all
 * @param percent  0 to 100: the weighted share of wishes met as the unit stands; 100 when nothing is wished for
 * @param met      wishes met
 * @param unmet    wishes not met
 */
public record Score(int mustsMet, int mustsAll, int percent, List<Requirement> met, List<Requirement> unmet) {
    /** @throws IllegalArgumentException if the percentage or the counts are out of range */
    public Score {
        met = List.copyOf(met);
        unmet = List.copyOf(unmet);
        if (percent < 0 || percent > 100 || mustsMet < 0 || mustsMet > mustsAll) {
            throw new IllegalArgumentException("score " + percent + " with " + mustsMet + " of " + mustsAll
                    + " must-haves is out of range");
        }
    }

    /**
     * The score of one problem; wishes are judged by what is known to be there.
     *
     * @param missed must-haves that cannot be met with the others
     */
    static Score of(Layout layout, Problem problem, int missed) {
        List<Requirement> met = new ArrayList<>();
        List<Requirement> unmet = new ArrayList<>();
        long weightMet = 0;
        long weightAll = 0;
        List<Requirement> requirements = layout.needs().requirements();
        for (int i = 0; i < requirements.size(); i++) {
            Requirement wish = requirements.get(i);
            if (!wish.must()) {
                boolean holds = layout.rowsOf(i).stream().allMatch(row -> problem.headroom()[row] >= 0);
                (holds ? met : unmet).add(wish);
                weightMet += holds ? wish.weight() : 0;
                weightAll += wish.weight();
            }
        }
        int percent = weightAll == 0 ? 100 : (int) (100 * weightMet / weightAll);
        int all = requirements.size() - met.size() - unmet.size();
        return new Score(all - missed, all, percent, met, unmet);
    }
}
