package fencerow.match;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntPredicate;

/**
 * The combinations of what unverified pieces may turn out to be. A piece's state that gives no more than another in
 * every row can only be the worse one; so the worst case needs only the states that are not better than another in
 * everything, and the best case only those that are not worse.
 */
final class Outcomes {
    /** Up to this many combinations are tried one by one: six pieces of two states each. */
    static final int MOST_TRIED = 64;

    private Outcomes() {}

    /** The bases among which the worst case is, and whether bounds had to stand for too many combinations. */
    record Bases(List<long[]> bases, boolean bracketed) {}

    /** Bases with every piece at a state that could be its worst. */
    static Bases worst(Problem problem) {
        return combine(problem, piece -> false);
    }

    /** Bases with every piece at a state that could be its best. */
    static Bases best(Problem problem) {
        return combine(problem, piece -> true);
    }

    /** Bases with the pieces of the mask at their best and all others at their worst. */
    static Bases bestOf(Problem problem, int mask) {
        return combine(problem, piece -> (mask & (1 << piece)) != 0);
    }

    private static Bases combine(Problem problem, IntPredicate best) {
        if (problem.pieces().isEmpty()) {
            return new Bases(List.of(withinLimits(problem, problem.headroom())), false);
        }
        List<List<Sparse>> states = new ArrayList<>();
        long combinations = 1;
        for (int p = 0; p < problem.pieces().size(); p++) {
            states.add(extremes(problem.pieces().get(p), best.test(p)));
            combinations = Math.min(MOST_TRIED + 1, combinations * states.get(p).size());
        }
        if (combinations > MOST_TRIED) {
            return new Bases(List.of(withinLimits(problem, bracket(problem, best))), true);
        }
        List<long[]> bases = List.of(problem.headroom());
        for (List<Sparse> each : states) {
            List<long[]> next = new ArrayList<>(bases.size() * each.size());
            for (long[] base : bases) {
                for (Sparse state : each) {
                    next.add(state.size() == 0 ? base : sum(base, state));
                }
            }
            bases = next;
        }
        List<long[]> within = new ArrayList<>(bases.size());
        for (long[] base : bases) {
            within.add(withinLimits(problem, base));
        }
        return new Bases(within, false);
    }

    /** A machine as it stands never breaks a limit by itself: what it cannot have, it has not. */
    private static long[] withinLimits(Problem problem, long[] headroom) {
        long[] within = headroom.clone();
        List<Setup.Row> rows = problem.setup().rows();
        for (int r = 0; r < within.length; r++) {
            if (rows.get(r).role() == Setup.Role.LIMIT) {
                within[r] = Math.max(within[r], 0);
            }
        }
        return within;
    }

    /** Row by row the worst or best of every piece: no real combination is worse, or better, than this. */
    private static long[] bracket(Problem problem, IntPredicate best) {
        long[] base = problem.headroom().clone();
        for (int p = 0; p < problem.pieces().size(); p++) {
            if (best.test(p)) {
                Spread.most(problem.pieces().get(p).states()).addTo(base);
            }
        }
        return base;
    }

    private static List<Sparse> extremes(Problem.Piece piece, boolean best) {
        List<Sparse> kept = new ArrayList<>(piece.states().size());
        for (Sparse state : piece.states()) {
            if (!isDominated(state, kept, best)) {
                kept.removeIf(other -> isMore(state, other, best));
                kept.add(state);
            }
        }
        return kept;
    }

    private static boolean isDominated(Sparse state, List<Sparse> kept, boolean best) {
        for (Sparse other : kept) {
            if (isMore(other, state, best)) {
                return true;
            }
        }
        return false;
    }

    /** Whether one state is at least as extreme as the other. */
    private static boolean isMore(Sparse one, Sparse other, boolean best) {
        return best ? other.isAtMost(one) : one.isAtMost(other);
    }

    private static long[] sum(long[] base, Sparse state) {
        long[] sum = base.clone();
        state.addTo(sum);
        return sum;
    }
}
