package fencerow.match;

import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * Parts already answered. Whatever unit, shopper or price list they come from, parts with the same numbers have the
 * same answer, so none is worked out twice. Confined to one thread until handed on; what is handed on is only read.
 */
final class Solved {
    private final Map<Problem.Signature, Part> before;
    private final Map<Problem.Signature, Part> now = new HashMap<>();
    private final Map<Whole, List<Share>> wholesBefore;
    private final Map<Whole, List<Share>> wholes = new HashMap<>();

    /** A problem told apart also by whose pieces it has. */
    private record Whole(Problem.Signature signature, List<Integer> features) {}

    private Solved(Map<Problem.Signature, Part> before, Map<Whole, List<Share>> wholesBefore) {
        this.before = before;
        this.wholesBefore = wholesBefore;
    }

    /** Knows nothing yet. */
    static Solved nothing() {
        return new Solved(Map.of(), Map.of());
    }

    /** Knows what was used last, and forgets what was used only before that. */
    Solved next() {
        return new Solved(now, wholes);
    }

    /**
     * The parts of a problem, answered.
     *
     * @param signature of the problem
     */
    List<Share> shares(Problem problem, Problem.Signature signature, Links links) {
        var whole = new Whole(
                signature,
                problem.pieces().stream().map(Problem.Piece::feature).toList());
        List<Share> known = wholes.get(whole);
        if (known == null) {
            known = wholesBefore.get(whole);
            if (known == null) {
                known = Split.of(problem, links).stream()
                        .map(slice -> new Share(slice, of(slice.problem())))
                        .toList();
            }
            wholes.put(whole, known);
        }
        return known;
    }

    /** The answered part. */
    Part of(Problem problem) {
        Problem.Signature signature = problem.signature();
        Part known = now.get(signature);
        if (known == null) {
            known = before.get(signature);
            if (known == null) {
                known = new Part(problem);
            }
            now.put(signature, known);
        }
        return known;
    }
}
