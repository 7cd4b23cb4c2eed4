package fencerow.match;

import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.BitSet;
import java.util.List;
import org.jspecify.annotations.Nullable;

/**
 * Items and rows of one kind that have nothing to do with its others, whatever the unit. Units of which the same is
 * known come out alike there, so most of it is worked out once. Confined to one thread.
 */
final class Section {
    private final Split.Slice slice;
    private final Solved solved;
    private final int[] features;
    private final long[] headroom;
    private final List<List<Contribution>> contributions;
    /** Filled as asked for; another thread that ranks next would only write the same. */
    private final @Nullable Contribution[][] within;
    private final PriceRange[] prices;
    private final Fingerprint fingerprint;
    private final int variety;
    private final int[] rows;
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
        this.rows = whole.rows();
        this.variety = kind.variety();
        int[] among = features(layout, rows);
        this.features = new int[among.length];
        this.contributions = new ArrayList<>(among.length);
        this.within = new Contribution[among.length][];
        for (int f = 0; f < among.length; f++) {
            features[f] = layout.features()[among[f]];
            contributions.add(kind.contributions(among[f]));
            within[f] = new Contribution[contributions.get(f).size()];
        }
        this.headroom = new long[rows.length];
        for (int r = 0; r < headroom.length; r++) {
            headroom[r] = kind.headroom()[rows[r]];
        }
        this.prices = new PriceRange[whole.items().length];
        for (int i = 0; i < prices.length; i++) {
            prices[i] = kind.price(whole.items()[i]);
        }
        this.fingerprint = Fingerprint.of(kind, slice.setup(), whole.items(), rows);
        this.reckoner = solved.reckoner(slice.setup(), fingerprint);
        this.known = solved.answers(lot, variety, fingerprint);
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
        this.within = same.within;
        this.prices = same.prices;
        this.fingerprint = same.fingerprint;
        this.variety = same.variety;
        this.rows = same.rows;
        this.reckoner = solved.reckoner(slice.setup(), fingerprint);
        this.known = solved.answers(lot, variety, fingerprint);
    }

    /** The same for the next ranking of the lot. */
    Section next(Lot lot, Solved others) {
        return new Section(this, lot, others);
    }

    /** What a fact adds to the section's rows. */
    private Contribution contribution(int feature, int fact) {
        Contribution known = within[feature][fact];
        if (known == null) {
            known = contributions.get(feature).get(fact).within(rows);
            within[feature][fact] = known;
        }
        return known;
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
            Contribution adds = contribution(f, facts.known()[f]);
            adds.known().addTo(own);
            if (!adds.open().isEmpty()) {
                pieces.add(new Problem.Piece(features[f], adds.open()));
            }
        }
        var problem = new Problem(slice.setup(), own, pieces);
        Reckoner.Answer found = reckoner.answer(problem).orElseGet(() -> solved.byParts(problem));
        PriceRange price = found.plan().map(plan -> plan.price(item -> prices[item])).orElse(PriceRange.ZERO);
        return new Answer(problem, found, price);
    }
}
