package fencerow.match;

import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Feature;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntFunction;
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
    private final long[] asked;
    private final long[] headroom;
    private final Setup setup;
    private final int[] free;

    Kind(Layout layout, Variety variety) {
        this.layout = layout;
        this.variety = variety;
        int rows = layout.conditions().size();
        this.asked = new long[rows];
        this.headroom = new long[rows];
        List<Setup.Row> changed = new ArrayList<>(layout.setup().rows());
        for (int c = 0; c < rows; c++) {
            asked[c] = layout.findLimited(c).isPresent() ? limit(layout.findLimited(c).get()) : asked(c);
            headroom[c] = asked[c] == NO_LIMIT
                    ? NO_LIMIT
                    : layout.term(c, layout.start(c, variety), asked[c]) - layout.bound(c, asked[c]);
            if (layout.isMax(c) && layout.varies(c)) {
                changed.set(c, layout.row(c, asked[c]));
            }
        }
        this.setup = new Setup(offered(), changed);
        this.free = IntStream.range(0, layout.items().size())
                .filter(item -> isFree(layout.items().get(item)))
                .toArray();
    }

    /** How many of the feature there can be on this model. */
    private long limit(Feature feature) {
        Integer own = variety.model().limits().get(feature.id());
        if (own != null) {
            return own;
        }
        return feature.most() == 1 ? NO_LIMIT : feature.most();
    }

    private long asked(int c) {
        return layout.varies(c)
                ? Levels.on(variety.model(), layout.conditions().get(c).demand().threshold()).steps()
                : layout.asked(c);
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
                cents[i] = variety.cents(place);
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

    /** The facts that matter, as one key: units of this kind with equal keys come out alike. */
    int[] relevant(int[] facts) {
        int[] features = layout.features();
        int[] relevant = new int[features.length];
        for (int f = 0; f < relevant.length; f++) {
            relevant[f] = facts[features[f]];
        }
        return relevant;
    }

    /** A unit of this kind as numbers, given its relevant facts. */
    Problem problem(int[] relevant) {
        return problem(f -> layout.contribution(f, relevant[f], asked));
    }

    /**
     * Any unit of this kind: what is known of each feature of the catalogue is one of the facts given, and nobody knows
     * which. What cannot matter to this problem can matter to none of the units, and what has nothing to do with each
     * other in it has not on any.
     */
    Problem anyOf(int[][] facts) {
        return problem(f -> layout.contribution(f, facts[layout.features()[f]], asked));
    }

    private Problem problem(IntFunction<Contribution> adding) {
        long[] values = headroom.clone();
        List<Problem.Piece> pieces = new ArrayList<>();
        for (int f = 0; f < layout.features().length; f++) {
            Contribution adds = adding.apply(f);
            adds.known().addTo(values);
            if (!adds.open().isEmpty()) {
                pieces.add(new Problem.Piece(layout.features()[f], adds.open()));
            }
        }
        return new Problem(setup, values, pieces);
    }
}
