package fencerow.match;

import fencerow.stock.Unit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import java.util.function.Supplier;

/**
 * What was answered before for units of one catalogue. Whatever unit or shopper they come from, problems with the same
 * numbers have the same answer, so none is worked out twice. Parts may be asked for from any thread; all else is
 * confined to one until handed on, and what is handed on is only read.
 */
final class Solved {
    private final Map<Problem.Signature, Part> partsBefore;
    private final Map<Problem.Signature, Part> parts = new ConcurrentHashMap<>();
    private final Map<Place, Known> answersBefore;
    private final Map<Place, Known> answers = new HashMap<>();
    private final Map<Fingerprint, Reckoner> reckonersBefore;
    private final Map<Fingerprint, Reckoner> reckoners = new HashMap<>();
    private final Map<Sections.Key, List<List<Section>>> cutsBefore;
    private final Map<Sections.Key, List<List<Section>>> cuts = new HashMap<>();

    /** A section of a lot's units, whose list is told apart by identity. */
    private record Place(List<Unit> units, int variety, Fingerprint fingerprint) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Place place
                    && units == place.units
                    && variety == place.variety
                    && fingerprint.equals(place.fingerprint);
        }

        @Override
        public int hashCode() {
            return 31 * variety + fingerprint.hashCode();
        }
    }

    private Solved(
            Map<Problem.Signature, Part> partsBefore,
            Map<Place, Known> answersBefore,
            Map<Fingerprint, Reckoner> reckonersBefore,
            Map<Sections.Key, List<List<Section>>> cutsBefore) {
        this.partsBefore = partsBefore;
        this.answersBefore = answersBefore;
        this.reckonersBefore = reckonersBefore;
        this.cutsBefore = cutsBefore;
    }

    /** Knows nothing yet. */
    static Solved nothing() {
        return new Solved(Map.of(), Map.of(), Map.of(), Map.of());
    }

    /** Knows what was used last, and forgets what was used only before that. */
    Solved next() {
        return new Solved(parts, answers, reckoners, cuts);
    }

    /**
     * What is known of a section's answers, to be added to.
     *
     * @param variety     of the section's kind
     * @param fingerprint of its setup
     */
    Known answers(Lot lot, int variety, Fingerprint fingerprint) {
        return answers.computeIfAbsent(
                new Place(lot.units(), variety, fingerprint),
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
     * For each kind of a lot the sections into which needs are cut.
     *
     * @param key of the needs
     * @param cut cuts them; asked only where they were not cut before
     */
    List<List<Section>> sections(Lot lot, Sections.Key key, Supplier<List<List<Section>>> cut) {
        List<List<Section>> now = cuts.get(key);
        if (now == null) {
            List<List<Section>> before = cutsBefore.get(key);
            now = before == null ? cut.get() : next(lot, before);
            cuts.put(key, now);
        }
        return now;
    }

    private List<List<Section>> next(Lot lot, List<List<Section>> before) {
        return before.stream()
                .map(kind -> kind.stream().map(each -> each.next(lot, this)).toList())
                .toList();
    }

    /** What answers problems of the setup with the fingerprint. */
    Reckoner reckoner(Setup setup, Fingerprint fingerprint) {
        return reckoners.computeIfAbsent(fingerprint, key -> {
            Reckoner before = reckonersBefore.get(key);
            return before == null ? new Reckoner(setup) : before.next();
        });
    }

    /** What a problem of too many outcomes comes to: its parts have fewer each, and bounds stand for fewer of them. */
    Reckoner.Answer byParts(Problem problem) {
        var nothing = Solver.Solution.nothing(problem.setup().items().count());
        var all = new Reckoner.Answer(Optional.of(nothing), true, 0, false);
        for (Split.Cut cut : Split.of(problem)) {
            all = all.and(new Reckoner(cut.problem().setup()).bracketed(cut.problem()), cut.slice().items());
        }
        return all;
    }

    /** The parts of a problem, answered. */
    List<Share> shares(Problem problem) {
        return Split.of(problem).stream()
                .map(cut -> new Share(cut.slice(), cut.problem().pieces(), of(cut.problem())))
                .toList();
    }

    /** The answered part. */
    Part of(Problem problem) {
        return parts.computeIfAbsent(problem.signature(), signature -> {
            Part before = partsBefore.get(signature);
            return before == null ? new Part(problem) : before;
        });
    }
}
