package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.AddOn;
import fencerow.stock.Item;
import fencerow.stock.Unit;
import fencerow.terms.Demand;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.PriceRange;
import fencerow.terms.Relation;
import fencerow.terms.Threshold;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Units of one kind, that is of one model, condition, availability and bundle, for one shopper: which items they can
 * have, at what price, and what each state of each feature adds to each row. Confined to one thread.
 */
final class Kind {
    private final Measures measures;
    private final Helpful helpful;
    private final List<Helpful.Condition> conditions = new ArrayList<>();
    private final int[] source;
    private final long[] thresholds;
    private final long[] start;
    private final Setup setup;
    private final Map<Feature, Map<Fact, long[]>> contributions = new HashMap<>();

    /**
     * Compiles the kind of a unit.
     *
     * @param unit any unit of the kind
     */
    Kind(Helpful.Index index, Helpful helpful, Unit unit, Needs needs) {
        this.measures = index.measures();
        this.helpful = helpful;
        var assortment = new Assortment(index.catalogue(), unit, needs);
        int[] had = IntStream.range(0, helpful.items().size())
                .filter(i -> assortment.refusal(helpful.items().get(i)).isEmpty())
                .toArray();
        int[] place = new int[helpful.items().size()];
        Arrays.fill(place, -1);
        for (int i = 0; i < had.length; i++) {
            place[had[i]] = i;
        }
        this.source = IntStream.range(0, helpful.conditions().size())
                .filter(c -> applies(helpful.conditions().get(c), place, unit))
                .toArray();
        IntStream.of(source).forEach(c -> conditions.add(helpful.conditions().get(c)));
        this.thresholds = conditions.stream().mapToLong(condition -> threshold(condition, unit)).toArray();
        this.start = new long[source.length];
        List<Setup.Row> rows = new ArrayList<>();
        for (int r = 0; r < source.length; r++) {
            start[r] = term(measures.start(unit, conditions.get(r).demand().of()), r);
            rows.add(row(r, had, place));
        }
        List<Item> items = IntStream.of(had).mapToObj(helpful.items()::get).toList();
        this.setup = new Setup(
                items.stream().map(item -> candidate(item, assortment)).toList(), rows, excludes(items));
    }

    /** A need of an item that can be had, or a limit of a feature where this model or any machine has one. */
    private static boolean applies(Helpful.Condition condition, int[] place, Unit unit) {
        if (condition.owner() >= 0) {
            return place[condition.owner()] >= 0;
        }
        boolean isFeatureLimit =
                condition.role() == Setup.Role.LIMIT && condition.demand().relation() == Relation.AT_MOST;
        return !isFeatureLimit || limit(condition, unit).isPresent() || mostOf(condition) > 1;
    }

    private static Optional<Integer> limit(Helpful.Condition condition, Unit unit) {
        return Optional.ofNullable(unit.model().limits().get(new FeatureId(condition.demand().of().value())));
    }

    private static long mostOf(Helpful.Condition condition) {
        return ((Threshold.Fixed) condition.demand().threshold()).amount().steps();
    }

    private static long threshold(Helpful.Condition condition, Unit unit) {
        Demand demand = condition.demand();
        boolean isFeatureLimit = condition.role() == Setup.Role.LIMIT && demand.relation() == Relation.AT_MOST;
        return isFeatureLimit && limit(condition, unit).isPresent()
                ? limit(condition, unit).get()
                : Levels.on(unit.model(), demand.threshold()).steps();
    }

    private long term(long raw, int row) {
        Helpful.Condition condition = conditions.get(row);
        return Measures.term(raw, condition.demand(), condition.max(), thresholds[row]);
    }

    private Setup.Row row(int r, int[] had, int[] place) {
        Helpful.Condition condition = conditions.get(r);
        Demand demand = condition.demand();
        long[] coefficient = new long[had.length];
        for (int i = 0; i < had.length; i++) {
            coefficient[i] = term(helpful.raw(had[i])[source[r]], r);
        }
        return new Setup.Row(
                condition.role(),
                condition.owner() < 0 ? -1 : place[condition.owner()],
                condition.requirement(),
                demand.of(),
                demand.relation(),
                measures.dimension(demand.of()),
                coefficient,
                measures.bound(demand, thresholds[r]));
    }

    private static Setup.Candidate candidate(Item item, Assortment assortment) {
        PriceRange price = assortment.findPrice(item).orElseThrow();
        int minutes = item instanceof AddOn addOn ? addOn.fitting().minutes() : 0;
        return new Setup.Candidate(item, item.max(), price, price.middle().cents(), minutes);
    }

    private static boolean[][] excludes(List<Item> items) {
        boolean[][] excludes = new boolean[items.size()][items.size()];
        for (int i = 0; i < items.size(); i++) {
            for (int j = 0; j < items.size(); j++) {
                excludes[i][j] = items.get(i).excludes().contains(items.get(j).id())
                        || items.get(j).excludes().contains(items.get(i).id());
            }
        }
        return excludes;
    }

    /** What is known of the features that matter, in a fixed order: units with equal facts come out alike. */
    List<Fact> facts(Unit unit) {
        List<Fact> facts = new ArrayList<>(helpful.features().size());
        for (Feature feature : helpful.features()) {
            facts.add(unit.fact(feature.id()));
        }
        return facts;
    }

    /** A unit of this kind as numbers. */
    Problem problem(List<Fact> facts) {
        long[] base = start.clone();
        List<Problem.Piece> pieces = new ArrayList<>();
        for (int f = 0; f < facts.size(); f++) {
            Feature feature = helpful.features().get(f);
            Fact fact = facts.get(f);
            if (fact instanceof Fact.Unverified open) {
                addPiece(feature, open, pieces);
            } else if (fact instanceof Fact.Fitted) {
                long[] adds = contribution(feature, fact);
                for (int r = 0; r < base.length; r++) {
                    base[r] += adds[r];
                }
            }
        }
        return new Problem(setup, base, pieces);
    }

    private void addPiece(Feature feature, Fact.Unverified open, List<Problem.Piece> to) {
        long[][] states = open.possible().stream().map(fact -> contribution(feature, fact)).toArray(long[][]::new);
        boolean matters = false;
        for (int r = 0; r < start.length; r++) {
            for (long[] state : states) {
                matters |= state[r] != 0 && setup.rows().get(r).role() != Setup.Role.WISH;
            }
        }
        if (matters) {
            to.add(new Problem.Piece(feature.id(), states));
        }
    }

    /** For each row what the feature adds in the state of affairs. */
    private long[] contribution(Feature feature, Fact fact) {
        return contributions
                .computeIfAbsent(feature, key -> new HashMap<>())
                .computeIfAbsent(fact, key -> {
                    long[] adds = new long[start.length];
                    if (fact instanceof Fact.Fitted fitted) {
                        long[] raw = helpful.raw(feature, fitted);
                        for (int r = 0; r < adds.length; r++) {
                            adds[r] = raw[source[r]] == 0 ? 0 : term(raw[source[r]], r);
                        }
                    }
                    return adds;
                });
    }
}
