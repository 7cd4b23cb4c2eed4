package fencerow.match;

import java.util.HashMap;
import java.util.Map;

/**
 * Parts already answered. Whatever unit, shopper or price list they come from, parts with the same numbers have the
 * same answer, so none is worked out twice. Confined to one thread until handed on; what is handed on is only read.
 */
final class Solved {
    private final Map<Problem.Signature, Part> before;
    private final Map<Problem.Signature, Part> now = new HashMap<>();

    private Solved(Map<Problem.Signature, Part> before) {
        this.before = before;
    }

    /** Knows nothing yet. */
    static Solved nothing() {
        return new Solved(Map.of());
    }

    /** Knows what was used last, and forgets what was used only before that. */
    Solved next() {
        return new Solved(now);
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
