package fencerow.match;

import fencerow.needs.Requirement;
import java.util.ArrayList;
import java.util.List;

/**
 * Judges the wishes for one unit by what is known to be there: as the unit stands with what comes with it and what the
 * shopper has, so far as that works on it; then with the plan. Immutable.
 */
final class Wishes {
    private final Kind kind;
    private final int[] facts;
    private final List<Integer> wishes;
    private final int mustsAll;
    private final boolean[] met;
    private final int percent;

    /**
     * The wishes as the unit stands.
     *
     * @param facts for each feature of the catalogue the place of what is known of it in the lot
     */
    Wishes(Kind kind, int[] facts) {
        this.kind = kind;
        this.facts = facts;
        this.wishes = kind.layout().wishes();
        this.mustsAll = kind.layout().needs().requirements().size() - wishes.size();
        this.met = new boolean[wishes.size()];
        int[] inUse = kind.free().length == 0 ? new int[0] : inUse(new int[kind.setup().items().count()]);
        long weightMet = 0;
        long weightAll = 0;
        for (int w = 0; w < met.length; w++) {
            met[w] = holds(wishes.get(w), inUse);
            int weight = requirement(wishes.get(w)).weight();
            weightAll += weight;
            weightMet += met[w] ? weight : 0;
        }
        this.percent = weightAll == 0 ? 100 : (int) (100 * weightMet / weightAll);
    }

    /** The weighted share of wishes met as the unit stands, 0 to 100; 100 when nothing is wished for. */
    int percent() {
        return percent;
    }

    /** How many must-haves there are beside the wishes. */
    int mustsAll() {
        return mustsAll;
    }

    /**
     * The score.
     *
     * @param missed  must-haves that cannot be met with the others
     * @param planned how many of each item the plan has
     */
    Score score(int missed, int[] planned) {
        List<Requirement> asItStands = new ArrayList<>();
        List<Requirement> byPlan = new ArrayList<>();
        List<Requirement> unmet = new ArrayList<>();
        int[] inUse = inUse(planned);
        for (int w = 0; w < met.length; w++) {
            List<Requirement> to = met[w] ? asItStands : holds(wishes.get(w), inUse) ? byPlan : unmet;
            to.add(requirement(wishes.get(w)));
        }
        return new Score(mustsAll() - missed, mustsAll(), percent, asItStands, byPlan, unmet);
    }

    private Requirement requirement(int place) {
        return kind.layout().needs().requirements().get(place);
    }

    /** For each item how many are there: those bought, and those that cost nothing so far as what they need is met. */
    private int[] inUse(int[] bought) {
        int[] counts = bought.clone();
        for (int item : kind.free()) {
            boolean works = true;
            for (int need : kind.layout().links().needs()[item]) {
                works &= standing(need) + change(need, bought, false) >= 0;
            }
            counts[item] = works ? kind.layout().items().get(item).max() : bought[item];
        }
        return counts;
    }

    /** What the unit has in the row beyond what is asked, each unverified piece at its worst. */
    private long standing(int row) {
        long standing = kind.headroom()[row];
        int[] features = kind.layout().features();
        for (int f : kind.layout().featuresOf(row)) {
            standing += kind.contributions(f).get(facts[features[f]]).known().at(row);
        }
        return standing;
    }

    /**
     * What items change in the row.
     *
     * @param counts how many of each; empty for none of any
     */
    private long change(int row, int[] counts, boolean onlyGains) {
        if (counts.length == 0) {
            return 0;
        }
        Sparse change = kind.setup().rows().get(row).change();
        long sum = 0;
        for (int k = 0; k < change.size(); k++) {
            long amount = change.amounts()[k];
            sum += onlyGains && amount < 0 ? 0 : amount * counts[change.places()[k]];
        }
        return sum;
    }

    private boolean holds(int wish, int[] counts) {
        for (int row : kind.layout().rowsOf(wish)) {
            long standing = standing(row);
            if (standing < 0 && standing + change(row, counts, true) < 0) {
                return false;
            }
        }
        return true;
    }
}
