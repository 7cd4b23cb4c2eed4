package fencerow.match;

import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.ItemId;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import fencerow.terms.Threshold;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.TreeSet;

/**
 * What can help one shopper's must-haves on any unit: the items that give what is asked, directly or through what such
 * items need in turn, with the conditions those can break; and items that cost nothing and meet a wish.
 *
 * @param items      places in the catalogue, rising
 * @param forWishes  those of the items that help no must-have: they are never planned
 * @param conditions must-haves and wishes first, in the needs' order
 */
record Helpful(List<Integer> items, Set<Integer> forWishes, List<Condition> conditions) {
    /**
     * A demand with what it stands for.
     *
     * @param whose the place in the needs of the requirement, or in {@link #items} of the item that needs it; else -1
     */
    record Condition(Setup.Role role, int whose, Demand demand) {
        /** Shared resources are kept at nothing or more; only features are kept at most. */
        boolean isFeatureLimit() {
            return role == Setup.Role.LIMIT && demand.relation() == Relation.AT_MOST;
        }
    }

    /** Follows the must-haves through the catalogue. */
    static Helpful of(Lot lot, Needs needs) {
        Index index = lot.index();
        Set<Integer> found = new TreeSet<>();
        Set<Demand> limits = new LinkedHashSet<>();
        Set<Demand> seen = new HashSet<>();
        Deque<Demand> open = new ArrayDeque<>();
        needs.musts().forEach(must -> open.addAll(must.demands()));
        while (!open.isEmpty()) {
            Demand demand = open.remove();
            if (!seen.add(demand)) {
                continue;
            }
            for (int item : index.givers(demand)) {
                if (found.add(item)) {
                    open.addAll(index.items().get(item).needs());
                    for (Demand limit : sharedLimits(index, index.items().get(item))) {
                        limits.add(limit);
                        open.add(limit);
                    }
                }
            }
        }
        Set<Integer> forWishes = freeForWishes(lot, needs);
        forWishes.removeAll(found);
        found.addAll(forWishes);
        List<Integer> items = List.copyOf(found);
        return new Helpful(items, forWishes, conditions(index, needs, items, limits));
    }

    /** What the shopper has, or some unit comes with, and meets a wish. */
    private static Set<Integer> freeForWishes(Lot lot, Needs needs) {
        Set<Integer> free = new TreeSet<>();
        for (Requirement wish : needs.wishes()) {
            for (Demand demand : wish.demands()) {
                for (int item : lot.index().givers(demand)) {
                    ItemId id = lot.index().items().get(item).id();
                    if (needs.owned().contains(id) || lot.bundled().contains(id)) {
                        free.add(item);
                    }
                }
            }
        }
        return free;
    }

    private static List<Condition> conditions(Index index, Needs needs, List<Integer> items, Set<Demand> limits) {
        List<Condition> conditions = new ArrayList<>();
        List<Requirement> requirements = needs.requirements();
        for (int i = 0; i < requirements.size(); i++) {
            Setup.Role role = requirements.get(i).must() ? Setup.Role.MUST : Setup.Role.WISH;
            for (Demand demand : requirements.get(i).demands()) {
                conditions.add(new Condition(role, i, demand));
            }
        }
        for (int i = 0; i < items.size(); i++) {
            for (Demand need : index.items().get(items.get(i)).needs()) {
                conditions.add(new Condition(Setup.Role.NEED, i, need));
            }
        }
        limits.forEach(limit -> conditions.add(new Condition(Setup.Role.LIMIT, -1, limit)));
        Set<Integer> helping = new HashSet<>(items);
        index.countedBy().forEach((of, feature) -> {
            if (index.itemsTouching(of).stream().anyMatch(helping::contains)) {
                conditions.add(new Condition(Setup.Role.LIMIT, -1, new Demand(
                        of, Relation.AT_MOST, Threshold.of(Amount.count(feature.most())), Demand.ANY_STATE)));
            }
        });
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
}
