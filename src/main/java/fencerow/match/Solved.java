package fencerow.match;

import fencerow.stock.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * Parts already answered. Whatever unit, shopper or price list they come from, parts with the same numbers have the
 * same answer, so none is worked out twice. Confined to one thread until handed on; what is handed on is only read.
 */
final class Solved {
    private final Map<Problem.Signature, Part> before;
    private final Map<Problem.Signature, Part> now = new HashMap<>();
    private final Map<Whole, List<Share>> wholesBefore;
    private final Map<Whole, List<Share>> wholes = new HashMap<>();
    private final Map<Place, Known> answersBefore;
    private final Map<Place, Known> answers = new HashMap<>();

    /** A problem told apart also by whose pieces it has. */
    private record Whole(Problem.Signature signature, List<Integer> features) {}

    /** A section of a lot's units, whose list is told apart by identity. */
    private record Place(List<Unit> units, Problem.Signature signature) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Place place && units == place.units && signature.equals(place.signature);
        }

        @Override
        public int hashCode() {
            return 31 * System.identityHashCode(units) + signature.hashCode();
        }
    }

    private Solved(
            Map<Problem.Signature, Part> before,
            Map<Whole, List<Share>> wholesBefore,
            Map<Place, Known> answersBefore) {
        this.before = before;
        this.wholesBefore = wholesBefore;
        this.answersBefore = answersBefore;
    }

    /** Knows nothing yet. */
    static Solved nothing() {
        return new Solved(Map.of(), Map.of(), Map.of());
    }

    /** Knows what was used last, and forgets what was used only before that. */
    Solved next() {
        return new Solved(now, wholes, answers);
    }

    /**
     * What is known of a section's answers, to be added to.
     *
     * @param signature of the section
     */
    Known answers(Lot lot, Problem.Signature signature) {
        return answers.computeIfAbsent(
                new Place(lot.units(), signature),
                place -> new Known(Optional.ofNullable(answersBefore.get(place)).map(known -> known.now)));
    }

    /** A section's answers: those that are asked for are kept, as long as each ranking asks for them. */
    static final class Known {
        private final Map<Section.Facts, Section.Answer> before;
        private final Map<Section.Facts, Section.Answer> now = new HashMap<>();

        private Known(Optional<Map<Section.Facts, Section.Answer>> before) {
            this.before = before.orElse(Map.of());
        }

        /** The answer where so much is known; {@code finds} is asked where it was never asked for. */
        Section.Answer answer(Section.Facts facts, Function<Section.Facts, Section.Answer> finds) {
            Section.Answer known = now.get(facts);
            if (known == null) {
                known = before.get(facts);
                if (known == null) {
                    known = finds.apply(facts);
                }
                now.put(facts, known);
            }
            return known;
        }
    }

    /**
     * The parts of a problem, answered.
     *
     * @param signature of the problem
     * @param links     of its setup; asked for only if the parts are not known yet
     */
    List<Share> shares(Problem problem, Problem.Signature signature, Supplier<Links> links) {
        var whole = new Whole(
                signature,
                problem.pieces().stream().map(Problem.Piece::feature).toList());
        List<Share> known = wholes.get(whole);
        if (known == null) {
            known = wholesBefore.get(whole);
            if (known == null) {
                known = Split.of(problem, links.get()).stream()
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
