package fencerow.match;

import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Feature;
import fencerow.terms.PriceRange;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Units of one variety for one shopper: which items they can have, at what price, and what each state of each feature
 * adds to each row. Immutable.
 */
final class Kind {
    /** So much headroom that nothing on sale uses it up: a limit that this kind does not have. */
    private static final long NO_LIMIT = 1L << 40;

    private final Layout layout;
    private final Variety variety;
    private final int place;
    private final long[] asked;
    private final long[] headroom;
    private final Setup setup;
    private final int[] free;
    private final List<List<Contribution>> contributions;

    /** @param place of the variety in the lot */
    Kind(Layout layout, Variety variety, int place) {
        this.layout = layout;
        this.place = place;
        this.variety = variety;
        int rows = layout.conditions().size();
        this.asked = new long[rows];
        this.headroom = new long[rows];
        List<Setup.Row> changed = new ArrayList<>(layout.setup().rows());
        for (int c = 0; c < rows; c++) {
            int row = c;
            asked[c] = layout.findLimited(c).map(this::limit).orElseGet(() -> layout.asked(row, variety.model()));
            headroom[c] = asked[c] == NO_LIMIT
                    ? NO_LIMIT
                    : layout.term(c, layout.start(c, variety), asked[c]) - layout.bound(c, asked[c]);
            if (layout.dependsOnModel(c)) {
                changed.set(c, layout.row(c, asked[c]));
            }
        }
        this.setup = new Setup(offered(), changed);
        this.free = IntStream.range(0, layout.items().size())
                .filter(item -> isFree(layout.items().get(item)))
                .toArray();
        this.contributions = new ArrayList<>();
        for (int f = 0; f < layout.features().length; f++) {
            contributions.add(layout.contributions(f, asked));
        }
    }

    /** How many of the feature there can be on this model. */
    private long limit(Feature feature) {
        Integer own = variety.model().limits().get(feature.id());
        if (own != null) {
            return own;
        }
        return feature.most() == 1 ? NO_LIMIT : feature.most();
    }

    private Setup.Items offered() {
        Setup.Items all = layout.setup().items();
        long[] cents = new long[all.count()];
        int[] most = new int[all.count()];
        for (int i = 0; i < cents.length; i++) {
            Item item = layout.items().get(i);
            int place = layout.place(i);
            if (layout.isForWishes(i)) {
                continue;
            }
            if (isFree(item)) {
                most[i] = item.max();
            } else if (variety.has(place) && !Assortment.isStopgapForTooLong(item, layout.needs())) {
                most[i] = item.max();
                cents[i] = variety.price(place).middle().cents();
            }
        }
        return new Setup.Items(cents, most, all.minutes(), all.excludes());
    }

    /** The items that the shopper has or that come with these units. */
    int[] free() {
        return free;
    }

    private boolean isFree(Item item) {
        return variety.bundles(item) || layout.needs().owned().contains(item.id());
    }

    /** The place of the variety in the lot. */
    int variety() {
        return place;
    }

    Layout layout() {
        return layout;
    }

    Setup setup() {
        return setup;
    }

    /** What a row asks of units of this kind. */
    Amount wanted(int row) {
        return Amount.ofSteps(dimension(row), asked[row]);
    }

    /** The amount that goes with a row's headroom; empty where only the best source counts, not how much there is. */
    Optional<Amount> amount(int row, long atHeadroom) {
        if (layout.isMax(row)) {
            return Optional.empty();
        }
        boolean most = layout.conditions().get(row).demand().relation() == Relation.AT_MOST;
        return Optional.of(Amount.ofSteps(
                dimension(row), most ? asked[row] - atHeadroom : asked[row] + atHeadroom));
    }

    /** What a row measures. */
    Dimension dimension(int row) {
        return layout.index().measures().dimension(layout.conditions().get(row).demand().of());
    }

    /** What a row asks of units of this kind, in steps. */
    long asked(int row) {
        return asked[row];
    }

    /** What units of this kind have in each row beyond what is asked, before any feature is counted. */
    long[] headroom() {
        return headroom;
    }

    /**
     * For each thing that is known of a feature on some unit of the lot, what it adds to each row.
     *
     * @param feature its place in {@link Layout#features}
     */
    List<Contribution> contributions(int feature) {
        return contributions.get(feature);
    }

    /** What one of the item, by its place in the layout, costs; only for one that can be had. */
    PriceRange price(int item) {
        return isFree(layout.items().get(item)) ? PriceRange.ZERO : variety.price(layout.place(item));
    }

    /**
     * A unit of this kind as numbers.
     *
     * @param facts for each feature of the catalogue the place of what is known of it in the lot
     */
    Problem problem(int[] facts) {
        long[] values = headroom.clone();
        List<Problem.Piece> pieces = new ArrayList<>();
        int[] features = layout.features();
        for (int f = 0; f < features.length; f++) {
            Contribution adds = contributions(f).get(facts[features[f]]);
            adds.known().addTo(values);
            if (!adds.open().isEmpty()) {
                pieces.add(new Problem.Piece(features[f], adds.open()));
            }
        }
        return new Problem(setup, values, pieces);
    }
}
