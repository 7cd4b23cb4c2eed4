package fencerow.match;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * Answers problems of one setup one after the other, and spares itself the search where an answer given before settles
 * it: what cannot be met stays so where less is there, and the cheapest stays the cheapest where less is there as long
 * as it still holds, for harder problems have no other answers than easier ones. Confined to one thread until handed
 * on; what is handed on is only read.
 */
final class Reckoner {
    private final Solver solver;
    private final boolean[] all;
    private final boolean[] nothing;
    private final List<Base> before;
    private final List<Base> bases = new ArrayList<>();
    private final List<Together> togetherBefore;
    private final List<Together> togethers = new ArrayList<>();

    /** The cheapest with so much headroom in each row; empty if there is none. */
    private record Base(long[] headroom, Optional<Solver.Solution> cheapest) {}

    /**
     * Which must-haves hold together at every one of some outcomes.
     *
     * @param outcomes the headroom of each row at each of them
     * @param kept     for each must-have whether it is one of those
     * @param found    for each outcome counts with which they hold
     */
    private record Together(List<long[]> outcomes, boolean[] kept, int[][] found) {}

    /**
     * What a problem comes to.
     *
     * @param plan      the cheapest, every unverified piece at its worst; empty where there is none
     * @param hopeful   whether the must-haves can be met at some outcome
     * @param missed    how many of them cannot be met with the others
     * @param bracketed whether bounds had to stand for too many outcomes
     */
    record Answer(Optional<Solver.Solution> plan, boolean hopeful, int missed, boolean bracketed) {
        /** The same with what another part comes to, given the places of its items. */
        Answer and(Answer part, int[] places) {
            return new Answer(
                    plan.flatMap(own -> part.plan.map(other -> own.with(other, places))),
                    hopeful && part.hopeful,
                    missed + part.missed,
                    bracketed || part.bracketed);
        }
    }

    private Reckoner(Solver solver, List<Base> before, List<Together> togetherBefore) {
        this.solver = solver;
        this.before = before;
        this.togetherBefore = togetherBefore;
        this.all = new boolean[solver.rows().musts()];
        Arrays.fill(all, true);
        this.nothing = new boolean[solver.items()];
    }

    /** Knows nothing yet. */
    Reckoner(Setup setup) {
        this(new Solver(setup), List.of(), List.of());
    }

    /** Knows what was used last. */
    Reckoner next() {
        return new Reckoner(solver, bases, togethers);
    }

    /** What the problem comes to; empty where there are too many outcomes to try. */
    Optional<Answer> answer(Problem problem) {
        return answer(problem, false);
    }

    /** What the problem comes to; bounds stand for outcomes where those are too many to try. */
    Answer bracketed(Problem problem) {
        return answer(problem, true).orElseThrow();
    }

    private Optional<Answer> answer(Problem problem, boolean mayBracket) {
        Outcomes.Bases worst = Outcomes.worst(problem);
        if (worst.bracketed() && !mayBracket) {
            return Optional.empty();
        }
        Optional<Solver.Solution> plan = cheapest(worst.bases());
        if (plan.isPresent()) {
            return Optional.of(new Answer(plan, true, 0, worst.bracketed()));
        }
        Outcomes.Bases best = Outcomes.best(problem);
        if (best.bracketed() && !mayBracket) {
            return Optional.empty();
        }
        return Optional.of(
                new Answer(plan, isHopeful(best.bases()), missed(worst.bases()), worst.bracketed()));
    }

    /**
     * The cheapest at the outcome where it costs most; empty where some outcome has none.
     *
     * @param outcomes the headroom of each row at each of them
     */
    Optional<Solver.Solution> cheapest(List<long[]> outcomes) {
        return solver.rows().dearest(outcomes, all, this::cheapest);
    }

    /** Whether all must-haves can be met at some outcome. */
    boolean isHopeful(List<long[]> outcomes) {
        for (long[] outcome : outcomes) {
            if (cheapest(outcome).isPresent()) {
                return true;
            }
        }
        return false;
    }

    private Optional<Solver.Solution> cheapest(long[] headroom) {
        Optional<Solver.Solution> start = Optional.empty();
        for (Base known : bases) {
            if (settles(known, headroom)) {
                return known.cheapest();
            }
            if (start.isEmpty() && isAtMost(known.headroom(), headroom)) {
                start = known.cheapest();
            }
        }
        for (Base known : before) {
            if (settles(known, headroom)) {
                bases.add(known);
                return known.cheapest();
            }
        }
        Optional<Solver.Solution> found = solver.cheapest(headroom, all, nothing, start);
        bases.add(new Base(headroom, found));
        return found;
    }

    private boolean settles(Base known, long[] headroom) {
        return isAtMost(headroom, known.headroom())
                && (known.cheapest().isEmpty()
                        || solver.rows().hold(headroom, all, known.cheapest().get().counts()));
    }

    private static boolean isAtMost(long[] headroom, long[] other) {
        for (int r = 0; r < headroom.length; r++) {
            if (headroom[r] > other[r]) {
                return false;
            }
        }
        return true;
    }

    /**
     * How many must-haves are left out when each is kept, in the order asked, if it can still be met at every outcome.
     */
    int missed(List<long[]> outcomes) {
        Together together = together(outcomes);
        int missed = 0;
        for (boolean kept : together.kept()) {
            missed += kept ? 0 : 1;
        }
        return missed;
    }

    private Together together(List<long[]> outcomes) {
        Optional<Together> easier = Optional.empty();
        for (Together known : togethers) {
            if (isEasier(known, outcomes)) {
                if (holds(known, outcomes)) {
                    return known;
                }
                easier = easier.or(() -> Optional.of(known));
            }
        }
        for (Together known : togetherBefore) {
            if (isEasier(known, outcomes) && holds(known, outcomes)) {
                togethers.add(known);
                return known;
            }
        }
        Together found = mostTogether(outcomes, easier);
        togethers.add(found);
        return found;
    }

    private static boolean isEasier(Together known, List<long[]> outcomes) {
        if (known.outcomes().size() != outcomes.size()) {
            return false;
        }
        for (int o = 0; o < outcomes.size(); o++) {
            if (!isAtMost(outcomes.get(o), known.outcomes().get(o))) {
                return false;
            }
        }
        return true;
    }

    private boolean holds(Together known, List<long[]> outcomes) {
        for (int o = 0; o < outcomes.size(); o++) {
            if (!solver.rows().hold(outcomes.get(o), known.kept(), known.found()[o])) {
                return false;
            }
        }
        return true;
    }

    /**
     * What was found for the must-haves kept so far mostly meets the next one too, which spares a search; and as long
     * as the same are kept, what cannot be kept where more is there cannot be here.
     */
    private Together mostTogether(List<long[]> outcomes, Optional<Together> easier) {
        boolean[] kept = new boolean[all.length];
        int[][] found = easier.map(known -> known.found().clone())
                .orElseGet(() -> new int[outcomes.size()][nothing.length]);
        boolean alike = easier.isPresent();
        int failed = 0;
        for (int must = 0; must < kept.length; must++) {
            if (!alike || easier.get().kept()[must]) {
                kept[must] = true;
                int fails = firstFailing(outcomes, kept, found, failed);
                if (fails >= 0) {
                    kept[must] = false;
                    alike = false;
                    failed = fails;
                }
            }
        }
        return new Together(outcomes, kept, found);
    }

    /**
     * An outcome at which the must-haves cannot be met; -1 if there is none.
     *
     * @param found for each outcome counts that may do, made so where others do
     * @param first the outcome to begin with: what failed before is the likeliest to fail again
     */
    private int firstFailing(List<long[]> outcomes, boolean[] asked, int[][] found, int first) {
        for (int o = 0; o < found.length; o++) {
            int at = (first + o) % found.length;
            if (!solver.rows().hold(outcomes.get(at), asked, found[at])) {
                Optional<Solver.Solution> other = solver.findAny(outcomes.get(at), asked);
                if (other.isEmpty()) {
                    return at;
                }
                found[at] = other.get().counts();
            }
        }
        return -1;
    }
}
