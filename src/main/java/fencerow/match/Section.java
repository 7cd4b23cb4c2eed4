package fencerow.match;

import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Items and rows of one kind that have nothing to do with its others, whatever the unit. Units of which the same is
 * known come out alike there, so most of it is worked out once. Confined to one thread.
 */
final class Section {
    private final Kind kind;
    private final Split.Slice slice;
    private final Setup setup;
    private final Solved solved;
    private final int[] features;
    private final int[] places;
    private final long[] itemNumbers;
    private final long[] rowNumbers;
    private final List<Map<Integer, Contribution>> contributions;
    private final Solved.Known known;
    private final Reckoner reckoner;

    /**
     * What a section comes to on some units.
     *
     * @param problem   the section as it is on them
     * @param plan      the cheapest, every unverified piece at its worst; empty where there is none
     * @param price     of the plan; nothing where there is none
     * @param hopeful   whether the must-haves can be met at some outcome
     * @param missed    how many of them cannot be met with the others
     * @param bracketed whether bounds had to stand for too many outcomes
     */
    record Answer(
            Problem problem,
            Optional<Solver.Solution> plan,
            PriceRange price,
            boolean hopeful,
            int missed,
            boolean bracketed) {}

    /** What is known of a section's features, as one key. */
    record Facts(int[] known) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Facts facts && Arrays.equals(known, facts.known);
        }

        @Override
        public int hashCode() {
            return Arrays.hashCode(known);
        }
    }

    /**
     * A section of a kind.
     *
     * @param slice  where it stands in the kind's rows
     * @param solved what was answered before
     */
    Section(Lot lot, Kind kind, Split.Slice slice, Solved solved) {
        this.kind = kind;
        this.slice = slice;
        this.setup = slice.problem().setup();
        this.solved = solved;
        Layout layout = kind.layout();
        this.features = IntStream.of(slice.rows())
                .flatMap(row -> IntStream.of(layout.featuresOf(row)))
                .sorted()
                .distinct()
                .toArray();
        this.places = IntStream.of(features).map(f -> layout.features()[f]).toArray();
        this.itemNumbers = Problem.Signature.numbers(setup.items());
        this.rowNumbers = Problem.Signature.numbers(setup.rows());
        this.contributions = IntStream.of(features).<Map<Integer, Contribution>>mapToObj(f -> new HashMap<>()).toList();
        this.reckoner = solved.reckoner(setup, new Problem.Signature(itemNumbers, rowNumbers, new long[0]));
        this.known = solved.answers(lot, signature(lot));
    }

    /** All that decides its answers: for the same lot, sections with equal signatures have equal answers. */
    private Problem.Signature signature(Lot lot) {
        var all = new Problem.Numbers(64 + 32 * features.length);
        all.add(kind.variety());
        for (int item : slice.items()) {
            all.add(kind.layout().place(item));
        }
        for (int row : slice.rows()) {
            all.add(kind.headroom()[row]);
        }
        for (int f = 0; f < features.length; f++) {
            all.add(places[f]);
            for (int fact : lot.seen(kind.variety())[places[f]]) {
                Contribution adds = contribution(f, fact);
                all.add(fact);
                all.add(adds.known());
                all.add(adds.open().size());
                adds.open().forEach(all::add);
            }
        }
        return new Problem.Signature(itemNumbers, rowNumbers, all.toArray());
    }

    /** What a fact adds to the section's rows. */
    private Contribution contribution(int feature, int fact) {
        return contributions.get(feature)
                .computeIfAbsent(fact, each -> kind.contributions(features[feature]).get(each).within(slice.rows()));
    }

    /** Its parts as they are where it comes to the answer, answered, as the kind numbers items and rows. */
    List<Share> shares(Answer answer) {
        return solved.shares(answer.problem()).stream()
                .map(share -> share.in(slice))
                .toList();
    }

    /** Where it stands. */
    Split.Slice slice() {
        return slice;
    }

    /**
     * What the section comes to on a unit.
     *
     * @param facts for each feature of the catalogue the place of what is known of it in the lot
     */
    Answer answer(int[] facts) {
        int[] own = new int[places.length];
        for (int f = 0; f < own.length; f++) {
            own[f] = facts[places[f]];
        }
        return known.answer(new Facts(own), this::found);
    }

    private Answer found(Facts facts) {
        long[] headroom = new long[slice.rows().length];
        for (int r = 0; r < headroom.length; r++) {
            headroom[r] = kind.headroom()[slice.rows()[r]];
        }
        List<Problem.Piece> pieces = new ArrayList<>();
        for (int f = 0; f < features.length; f++) {
            Contribution adds = contribution(f, facts.known()[f]);
            adds.known().addTo(headroom);
            if (!adds.open().isEmpty()) {
                pieces.add(new Problem.Piece(places[f], adds.open()));
            }
        }
        var problem = new Problem(setup, headroom, pieces);
        return answer(problem, slice.items(), reckoner, false).orElseGet(() -> byParts(problem));
    }

    /**
     * Answers the section or a part of it; empty where bounds would have to stand for too many outcomes.
     *
     * @param items        for each of its items the place in the kind
     * @param mayBeBracket whether bounds may stand for outcomes
     */
    private Optional<Answer> answer(Problem problem, int[] items, Reckoner reckoner, boolean mayBeBracket) {
        Outcomes.Bases worst = Outcomes.worst(problem);
        if (worst.bracketed() && !mayBeBracket) {
            return Optional.empty();
        }
        Optional<Solver.Solution> plan = reckoner.cheapest(worst.bases());
        if (plan.isPresent()) {
            PriceRange price = kind.price(items, plan.get().counts());
            return Optional.of(new Answer(problem, plan, price, true, 0, worst.bracketed()));
        }
        Outcomes.Bases best = Outcomes.best(problem);
        if (best.bracketed() && !mayBeBracket) {
            return Optional.empty();
        }
        boolean hopeful = reckoner.isHopeful(best.bases());
        int missed = reckoner.missed(worst.bases());
        return Optional.of(new Answer(problem, plan, PriceRange.ZERO, hopeful, missed, worst.bracketed()));
    }

    /** The parts have fewer outcomes each than the whole, so that bounds have to stand for fewer of them. */
    private Answer byParts(Problem problem) {
        var nothing = Solver.Solution.nothing(setup.items().count());
        var all = new Answer(problem, Optional.of(nothing), PriceRange.ZERO, true, 0, false);
        for (Split.Slice part : Split.of(problem, Links.of(setup.items().count(), setup.rows()))) {
            Setup own = part.problem().setup();
            Reckoner reckons = solved.reckoner(own, Problem.Signature.of(own));
            Answer answer = answer(part.problem(), part.in(slice).items(), reckons, true).orElseThrow();
            all = new Answer(
                    problem,
                    all.plan().flatMap(plan -> answer.plan().map(more -> plan.with(more, part.items()))),
                    all.price().plus(answer.price()),
                    all.hopeful() && answer.hopeful(),
                    all.missed() + answer.missed(),
                    all.bracketed() || answer.bracketed());
        }
        return all;
    }
}
