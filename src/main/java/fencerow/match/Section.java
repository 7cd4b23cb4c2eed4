package fencerow.match;

import fencerow.terms.PriceRange;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import org.jspecify.annotations.Nullable;

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
    private @Nullable Links links;

    /**
     * What a section comes to on some units.
     *
     * @param feasible whether its must-haves can be met, every unverified piece at its worst
     * @param hopeful  whether they can at some outcome
     * @param missed   how many of them cannot be met with the others
     * @param price    of its part of the plan; nothing where there is none
     * @param shares   its parts, as the section numbers items, rows and must-haves
     */
    record Answer(boolean feasible, boolean hopeful, int missed, PriceRange price, List<Share> shares) {}

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

    private Links links() {
        Links made = links;
        if (made == null) {
            made = Links.of(setup.items().count(), setup.rows());
            links = made;
        }
        return made;
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
        return answer(solved.shares(problem, new Problem.Signature(itemNumbers, rowNumbers, problem), this::links));
    }

    private Answer answer(List<Share> shares) {
        boolean feasible = true;
        boolean hopeful = true;
        int missed = 0;
        for (Share share : shares) {
            feasible &= share.part().solution().isPresent();
            hopeful &= share.part().isHopeful();
            missed += share.part().mustsAll() - share.part().mustsMet();
        }
        return new Answer(feasible, hopeful, missed, feasible ? price(shares) : PriceRange.ZERO, shares);
    }

    private PriceRange price(List<Share> shares) {
        PriceRange price = PriceRange.ZERO;
        for (Share share : shares) {
            int[] items = share.in(slice).slice().items();
            price = price.plus(kind.price(items, share.part().solution().orElseThrow().counts()));
        }
        return price;
    }
}
