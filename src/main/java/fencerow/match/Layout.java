package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.AddOn;
import fencerow.stock.Item;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.Feature;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * One shopper's needs laid out as numbers by all that does not depend on the machine: one row for each condition, one
 * column for each helpful item. Made once for all units. Immutable.
 */
final class Layout {
    private final Index index;
    private final Needs needs;
    private final int[] places;
    private final List<Item> items;
    private final List<Helpful.Condition> conditions;
    private final boolean[] forWishes;
    private final boolean[] least;
    private final boolean[] max;
    private final boolean[] varies;
    private final long[] asked;
    private final int[] capability;
    private final int[] hashes;
    private final List<List<Integer>> rowsOf = new ArrayList<>();
    private final List<Integer> wishes;
    private final List<Sparse> given;
    private final Setup setup;
    private final Links links;
    private final int[] features;
    private final List<List<List<Sparse>>> raw;
    private final List<Optional<List<Contribution>>> contributions;
    private final int[][] featuresOf;

    Layout(Lot lot, Needs needs) {
        this.index = lot.index();
        this.needs = needs;
        Helpful helpful = Helpful.of(lot, needs);
        this.places = helpful.items().stream().mapToInt(Integer::intValue).toArray();
        this.items = helpful.items().stream().map(index.items()::get).toList();
        this.conditions = helpful.conditions();
        this.forWishes = new boolean[places.length];
        helpful.forWishes().forEach(place -> forWishes[columnOf(place)] = true);
        List<Demand> demands = conditions.stream().map(Helpful.Condition::demand).toList();
        for (Requirement requirement : needs.requirements()) {
            int first = rowsOf.stream().mapToInt(List::size).sum();
            rowsOf.add(IntStream.range(first, first + requirement.demands().size())
                    .boxed()
                    .toList());
        }
        this.wishes = IntStream.range(0, rowsOf.size())
                .filter(place -> !needs.requirements().get(place).must())
                .boxed()
                .toList();
        this.least = new boolean[demands.size()];
        this.max = new boolean[demands.size()];
        this.varies = new boolean[demands.size()];
        this.asked = new long[demands.size()];
        this.capability = new int[demands.size()];
        this.hashes = demands.stream().mapToInt(Demand::hashCode).toArray();
        for (int c = 0; c < max.length; c++) {
            Demand demand = demands.get(c);
            least[c] = demand.relation() == Relation.AT_LEAST;
            max[c] = index.measures().isMax(demand.of());
            capability[c] = index.numberOf(demand.of());
            Optional<Amount> same = Levels.findOnAny(demand.threshold());
            varies[c] = same.isEmpty();
            asked[c] = same.map(Amount::steps).orElse(1L);
        }
        this.given = conditions.stream().map(this::raw).toList();
        this.setup = new Setup(
                new Setup.Items(new long[places.length], new int[places.length], minutes(), excludes()),
                IntStream.range(0, max.length)
                        .mapToObj(c -> row(c, asked[c]))
                        .toList());
        this.links = Links.of(places.length, setup.rows());
        this.features = index.featuresTouching(demands.stream().map(Demand::of).collect(Collectors.toSet()));
        Map<CapabilityId, List<Integer>> asking = new HashMap<>();
        for (int c = 0; c < max.length; c++) {
            asking.computeIfAbsent(demands.get(c).of(), of -> new ArrayList<>()).add(c);
        }
        this.raw = IntStream.of(features)
                .mapToObj(f -> lot.effects(f).stream()
                        .map(open -> open.stream().map(effects -> raw(effects, asking)).toList())
                        .toList())
                .toList();
        this.contributions = raw.stream()
                .map(facts -> facts.stream()
                                .flatMap(List::stream)
                                .flatMapToInt(state -> IntStream.of(state.places()))
                                .anyMatch(this::dependsOnModel)
                        ? Optional.<List<Contribution>>empty()
                        : Optional.of(contributions(facts, asked)))
                .toList();
        this.featuresOf = featuresOf(demands);
    }

    private int[][] featuresOf(List<Demand> demands) {
        Map<CapabilityId, int[]> touching = new HashMap<>();
        return demands.stream()
                .map(demand -> touching.computeIfAbsent(demand.of(), of -> IntStream.of(
                                index.featuresTouching(Set.of(of)))
                        .map(place -> Arrays.binarySearch(features, place))
                        .toArray()))
                .toArray(int[][]::new);
    }

    private int[] minutes() {
        return items.stream()
                .mapToInt(item -> item instanceof AddOn addOn ? addOn.fitting().minutes() : 0)
                .toArray();
    }

    private int[][] excludes() {
        return IntStream.of(places)
                .mapToObj(place -> index.excludes(place).stream()
                        .mapToInt(this::columnOf)
                        .filter(column -> column >= 0)
                        .toArray())
                .toArray(int[][]::new);
    }

    private int columnOf(int place) {
        return Math.max(-1, Arrays.binarySearch(places, place));
    }

    /** For each item what one piece comes to for the condition, in steps. */
    private Sparse raw(Helpful.Condition condition) {
        long[] all = new long[places.length];
        for (int place : index.itemsTouching(condition.demand().of())) {
            int column = columnOf(place);
            if (column >= 0) {
                all[column] = index.raw(place, condition.demand());
            }
        }
        return Sparse.of(all);
    }

    /** The row of a condition, given what is asked in steps. */
    Setup.Row row(int c, long asked) {
        Sparse gives = given.get(c);
        Sparse change = Sparse.at(gives.places(), item -> term(c, gives.at(item), asked));
        return new Setup.Row(conditions.get(c).role(), conditions.get(c).whose(), change);
    }

    /** What effects come to for each condition, in steps. */
    private Sparse raw(List<Effect> effects, Map<CapabilityId, List<Integer>> asking) {
        int[] touched = effects.stream()
                .map(Effect::of)
                .distinct()
                .flatMap(of -> asking.getOrDefault(of, List.of()).stream())
                .mapToInt(Integer::intValue)
                .sorted()
                .toArray();
        return Sparse.at(touched, c -> index.measures().raw(effects, conditions.get(c).demand()));
    }

    /**
     * A raw amount as the term of a row. Where the best single source counts, a source either reaches what is asked or
     * does nothing; at-most demands are turned round.
     */
    long term(int c, long amount, long asked) {
        if (max[c]) {
            return least[c] ? (amount >= asked ? 1 : 0) : (amount > asked ? -1 : 0);
        }
        return least[c] ? amount : -amount;
    }

    /** What the terms of a row must reach. */
    long bound(int c, long asked) {
        if (max[c]) {
            return least[c] ? 1 : 0;
        }
        return least[c] ? asked : -asked;
    }

    Index index() {
        return index;
    }

    Needs needs() {
        return needs;
    }

    /** The helpful items, in catalogue order. */
    List<Item> items() {
        return items;
    }

    /** Whether the item is there for wishes only, and never planned. */
    boolean isForWishes(int item) {
        return forWishes[item];
    }

    /** The item's place in the catalogue. */
    int place(int item) {
        return places[item];
    }

    List<Helpful.Condition> conditions() {
        return conditions;
    }

    /** Places of the wishes in the needs, rising. */
    List<Integer> wishes() {
        return wishes;
    }

    /** The rows of a must-have or wish, by its place in the needs. */
    List<Integer> rowsOf(int requirement) {
        return rowsOf.get(requirement);
    }

    /** A hash of the condition's demand. */
    int hash(int c) {
        return hashes[c];
    }

    /** What the condition asks on the model, in steps. */
    long asked(int c, Model model) {
        return varies[c] ? Levels.on(model, conditions.get(c).demand().threshold()).steps() : asked[c];
    }

    /** What units of the variety start with for the condition, in steps. */
    long start(int c, Variety variety) {
        return capability[c] < 0
                ? index.measures().start(variety.like(), conditions.get(c).demand().of())
                : variety.start(capability[c]);
    }

    /** The feature whose count the condition limits, where it is such a one. */
    Optional<Feature> findLimited(int c) {
        Helpful.Condition condition = conditions.get(c);
        return condition.isFeatureLimit() ? index.findFeature(condition.demand().of()) : Optional.empty();
    }

    /** Whether what one piece of an item does for the row depends on how much is asked. */
    boolean isMax(int c) {
        return max[c];
    }

    /** Whether what a source does for the row depends on the model: it has to reach what is asked there. */
    boolean dependsOnModel(int c) {
        return max[c] && varies[c];
    }

    /** The rows, with every item out of reach. */
    Setup setup() {
        return setup;
    }

    /** Where each item stands in the rows. */
    Links links() {
        return links;
    }

    /** Places in the catalogue of the features that touch a condition. */
    int[] features() {
        return features;
    }

    /** Places in {@link #features} of the features that touch the row, rising. */
    int[] featuresOf(int row) {
        return featuresOf[row];
    }

    /**
     * For each thing that is known of a feature on some unit of the lot, what it adds to each row.
     *
     * @param feature its place in {@link #features}
     * @param by      what each condition asks on the model, in steps
     */
    List<Contribution> contributions(int feature, long[] by) {
        return contributions.get(feature).orElseGet(() -> contributions(raw.get(feature), by));
    }

    private List<Contribution> contributions(List<List<Sparse>> facts, long[] by) {
        return facts.stream()
                .map(states -> Contribution.of(states.stream()
                        .map(state -> Sparse.at(state.places(), c -> term(c, state.at(c), by[c])))
                        .toList()))
                .toList();
    }
}
