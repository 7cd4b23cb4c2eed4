package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import fencerow.terms.Threshold;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * What can help one shopper's must-haves on any unit: the items that give what is asked, directly or through what such
 * items need in turn, with the conditions those can break. Made once for all units; confined to one thread.
 */
final class Helpful {
    private final Index index;
    private final List<Item> items;
    private final List<Condition> conditions;
    private final List<Feature> features;
    private final long[][] rawByItem;
    private final Map<Feature, Map<Fact, long[]>> rawByFact = new HashMap<>();

    private Helpful(Index index, List<Item> items, List<Condition> conditions, List<Feature> features) {
        this.index = index;
        this.items = items;
        this.conditions = conditions;
        this.features = features;
        this.rawByItem = items.stream()
                .map(item -> raw(index.catalogue().effects(item)))
                .toArray(long[][]::new);
    }

    /** In catalogue order. */
    List<Item> items() {
        return items;
    }

    /** Must-haves and wishes first, in the needs' order. */
    List<Condition> conditions() {
        return conditions;
    }

    /** The features that touch a condition. */
    List<Feature> features() {
        return features;
    }

    /** For each condition what the item comes to, in steps. */
    long[] raw(int item) {
        return rawByItem[item];
    }

    /** For each condition what the feature comes to when it is fitted so, in steps. */
    long[] raw(Feature feature, Fact.Fitted fitted) {
        return rawByFact
                .computeIfAbsent(feature, key -> new HashMap<>())
                .computeIfAbsent(fitted, key -> raw(feature.effects(fitted.kind()).stream()
                        .map(effect -> effect.times(fitted.count()))
                        .toList()));
    }

    private long[] raw(List<Effect> effects) {
        long[] raw = new long[conditions.size()];
        for (int c = 0; c < raw.length; c++) {
            raw[c] = index.measures().raw(effects, conditions.get(c).demand());
        }
        return raw;
    }

    /**
     * A demand with what it stands for.
     *
     * @param owner       the place of the item whose need it is, else -1
     * @param requirement the requirement's place in the needs, else -1
     * @param max         whether the best single source counts rather than the sum
     */
    record Condition(Setup.Role role, int owner, int requirement, Demand demand, boolean max) {}

    /** The catalogue's items by what they change; made once for a catalogue. */
    static final class Index {
        private final Catalogue catalogue;
        private final Measures measures;
        private final Map<CapabilityId, List<Item>> touching = new HashMap<>();
        private final Map<Item, Integer> place = new HashMap<>();

        Index(Catalogue catalogue) {
            this.catalogue = catalogue;
            this.measures = new Measures(catalogue);
            for (Item item : catalogue.items()) {
                place.put(item, place.size());
                Set<CapabilityId> of = new LinkedHashSet<>();
                catalogue.effects(item).forEach(effect -> of.add(effect.of()));
                of.forEach(each -> touching.computeIfAbsent(each, key -> new ArrayList<>()).add(item));
            }
        }

        Catalogue catalogue() {
            return catalogue;
        }

        Measures measures() {
            return measures;
        }

        Condition condition(Setup.Role role, int owner, int requirement, Demand demand) {
            return new Condition(role, owner, requirement, demand, measures.isMax(demand.of()));
        }

        boolean touches(Item item, CapabilityId of) {
            return touching.getOrDefault(of, List.of()).contains(item);
        }

        /** Items that give toward the demand. */
        List<Item> givers(Demand demand) {
            boolean least = demand.relation() == Relation.AT_LEAST;
            return touching.getOrDefault(demand.of(), List.of()).stream()
                    .filter(item -> {
                        long raw = measures.raw(catalogue.effects(item), demand);
                        return least ? raw > 0 : raw < 0;
                    })
                    .toList();
        }
    }

    /** Follows the must-haves through the catalogue. */
    static Helpful of(Index index, Needs needs) {
        Set<Item> found = new HashSet<>();
        Set<Demand> limits = new LinkedHashSet<>();
        Set<Demand> seen = new HashSet<>();
        Deque<Demand> open = new ArrayDeque<>();
        needs.musts().forEach(must -> open.add(must.demand()));
        while (!open.isEmpty()) {
            Demand demand = open.remove();
            if (!seen.add(demand)) {
                continue;
            }
            for (Item item : index.givers(demand)) {
                if (found.add(item)) {
                    open.addAll(item.needs());
                    for (Demand limit : sharedLimits(index, item)) {
                        limits.add(limit);
                        open.add(limit);
                    }
                }
            }
        }
        List<Item> items = found.stream()
                .sorted(Comparator.comparing(item -> index.place.getOrDefault(item, 0)))
                .toList();
        List<Condition> conditions = conditions(index, needs, items, limits);
        return new Helpful(index, items, conditions, touching(index.catalogue(), conditions));
    }

    private static List<Condition> conditions(
            Index index, Needs needs, List<Item> items, Set<Demand> limits) {
        List<Condition> conditions = new ArrayList<>();
        List<Requirement> requirements = needs.requirements();
        for (int i = 0; i < requirements.size(); i++) {
            Setup.Role role = requirements.get(i).must() ? Setup.Role.MUST : Setup.Role.WISH;
            conditions.add(index.condition(role, -1, i, requirements.get(i).demand()));
        }
        for (int i = 0; i < items.size(); i++) {
            for (Demand need : items.get(i).needs()) {
                conditions.add(index.condition(Setup.Role.NEED, i, -1, need));
            }
        }
        limits.forEach(limit -> conditions.add(index.condition(Setup.Role.LIMIT, -1, -1, limit)));
        for (Feature feature : index.catalogue().features()) {
            CapabilityId of = CapabilityId.of(feature.id());
            if (items.stream().anyMatch(item -> index.touches(item, of))) {
                conditions.add(index.condition(Setup.Role.LIMIT, -1, -1, new Demand(
                        of, Relation.AT_MOST, Threshold.of(Amount.count(feature.most())), Demand.ANY_STATE)));
            }
        }
        return conditions;
    }

    /** That every shared resource the item takes from stays at nothing or above, in each state it is taken in. */
    private static List<Demand> sharedLimits(Index index, Item item) {
        List<Demand> limits = new ArrayList<>();
        for (Effect effect : index.catalogue().effects(item)) {
            if (index.measures().isShared(effect.of()) && effect.amount().si() < 0) {
                Threshold nothing = Threshold.of(new Amount(effect.amount().dimension(), 0));
                Set<StateId> states = effect.in().isEmpty() ? Set.of(Demand.ANY_STATE) : effect.in();
                states.stream()
                        .sorted()
                        .forEach(state -> limits.add(new Demand(effect.of(), Relation.AT_LEAST, nothing, state)));
            }
        }
        return limits;
    }

    private static List<Feature> touching(Catalogue catalogue, List<Condition> conditions) {
        Set<CapabilityId> asked = new HashSet<>();
        conditions.forEach(condition -> asked.add(condition.demand().of()));
        return catalogue.features().stream()
                .filter(feature -> asked.contains(CapabilityId.of(feature.id()))
                        || feature.kinds().stream()
                                .anyMatch(kind -> asked.contains(CapabilityId.of(feature.id(), kind)))
                        || feature.gives().stream().anyMatch(effect -> asked.contains(effect.of()))
                        || feature.kindGives().values().stream()
                                .anyMatch(effects -> effects.stream().anyMatch(e -> asked.contains(e.of()))))
                .toList();
    }
}
