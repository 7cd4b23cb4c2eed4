package fencerow.match;

import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import java.util.Optional;

/**
 * Items and rows of one kind that have nothing to do with its others, whatever the unit. Units of which the same is
 * known come out alike there, so most of it is worked out once. Confined to one thread.
 */
final class Section {
    private final Split.Slice slice;
    private final Solved solved;
    private final int[] features;
    private final long[] headroom;
    private final Contribution[][] contributions;
    private final PriceRange[] prices;
    private final Problem.Signature ofSetup;
    private final Problem.Signature signature;
    private final Solved.Known known;
    private final Reckoner reckoner;

    /**
     * What a section comes to on some units.
     *
     * @param problem the section as it is on them
     * @param found   what the problem comes to
     * @param price   of the plan; nothing where there is none
     */
    record Answer(Problem problem, Reckoner.Answer found, PriceRange price) {}

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
     * @param larger where what it was cut from stands in the kind
     * @param slice  where it stands in that
     * @param solved what was answered before
     */
    Section(Lot lot, Kind kind, Split.Slice larger, Split.Slice slice, Solved solved) {
        this.slice = slice;
        this.solved = solved;
        Layout layout = kind.layout();
        Split.Slice whole = slice.in(larger);
        int[] among = features(layout, whole.rows());
        this.features = new int[among.length];
        this.contributions = new Contribution[among.length][];
        for (int f = 0; f < among.length; f++) {
            features[f] = layout.features()[among[f]];
            List<Contribution> all = kind.contributions(among[f]);
            contributions[f] = new Contribution[all.size()];
            for (int fact : lot.seen(kind.variety())[features[f]]) {
                contributions[f][fact] = all.get(fact).within(whole.rows());
            }
        }
        this.headroom = new long[whole.rows().length];
        for (int r = 0; r < headroom.length; r++) {
            headroom[r] = kind.headroom()[whole.rows()[r]];
        }
        Setup setup = slice.problem().setup();
        this.prices = new PriceRange[setup.items().count()];
        for (int i = 0; i < prices.length; i++) {
            prices[i] = kind.price(whole.items()[i]);
        }
        this.ofSetup = Problem.Signature.of(setup);
        this.signature = ofSetup.with(numbers(lot, kind, whole.items()));
        this.reckoner = solved.reckoner(setup, ofSetup);
        this.known = solved.answers(lot, signature);
    }

    /** The features that touch any of the rows, by their places in the layout, rising. */
    private static int[] features(Layout layout, int[] rows) {
        var touching = new BitSet();
        for (int row : rows) {
            for (int feature : layout.featuresOf(row)) {
                touching.set(feature);
            }
        }
        return touching.stream().toArray();
    }

    private Section(Section same, Lot lot, Solved solved) {
        this.slice = same.slice;
        this.solved = solved;
        this.features = same.features;
        this.headroom = same.headroom;
        this.contributions = same.contributions;
        this.prices = same.prices;
        this.ofSetup = same.ofSetup;
        this.signature = same.signature;
        this.reckoner = solved.reckoner(slice.problem().setup(), ofSetup);
        this.known = solved.answers(lot, signature);
    }

    /** The same for the next ranking of the lot. */
    Section next(Lot lot, Solved others) {
        return new Section(this, lot, others);
    }

    /** With the setup all that decides its answers: for the same lot, equal numbers have equal answers. */
    private long[] numbers(Lot lot, Kind kind, int[] items) {
        var all = new Problem.Numbers(64 + 32 * features.length);
        all.add(kind.variety());
        for (int item : items) {
            all.add(kind.layout().place(item));
        }
        for (long each : headroom) {
            all.add(each);
        }
        for (int f = 0; f < features.length; f++) {
            all.add(features[f]);
            for (int fact : lot.seen(kind.variety())[features[f]]) {
                Contribution adds = contributions[f][fact];
                all.add(fact);
                all.add(adds.known());
                all.add(adds.open().size());
                adds.open().forEach(all::add);
            }
        }
        return all.toArray();
    }

    /** Its parts as they are where it comes to the answer, answered, as it numbers items and rows. */
    List<Share> shares(Answer answer) {
        return solved.shares(answer.problem());
    }

    /** Where it stands in what it was cut from. */
    Split.Slice slice() {
        return slice;
    }

    /**
     * What the section comes to on a unit.
     *
     * @param facts for each feature of the catalogue the place of what is known of it in the lot
     */
    Answer answer(int[] facts) {
        int[] own = new int[features.length];
        for (int f = 0; f < own.length; f++) {
            own[f] = facts[features[f]];
        }
        return known.answer(new Facts(own), this::found);
    }

    private Answer found(Facts facts) {
        long[] own = headroom.clone();
        List<Problem.Piece> pieces = new ArrayList<>();
        for (int f = 0; f < features.length; f++) {
            Contribution adds = contributions[f][facts.known()[f]];
            adds.known().addTo(own);
            if (!adds.open().isEmpty()) {
                pieces.add(new Problem.Piece(features[f], adds.open()));
            }
        }
        var problem = new Problem(slice.problem().setup(), own, pieces);
        Reckoner.Answer found = reckoner.answer(problem).orElseGet(() -> solved.byParts(problem));
        return new Answer(problem, found, found.plan().map(this::price).orElse(PriceRange.ZERO));
    }

    private PriceRange price(Solver.Solution plan) {
        PriceRange price = PriceRange.ZERO;
        for (int i = 0; i < prices.length; i++) {
            int count = plan.counts()[i];
            price = count == 0 ? price : price.plus(prices[i].times(count));
        }
        return price;
    }
}
