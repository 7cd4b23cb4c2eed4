package fencerow.match;

import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/**
 * Finds what truly stands in the way of a must-have: not the first check that failed, but the end of the chain from the
 * must-have through the items that could meet it and what those need in turn.
 */
final class Causes {
    private final Catalogue catalogue;
    private final Assortment assortment;
    private final Setup setup;
    private final long[] base;

    Causes(Assortment assortment, Setup setup, long[] base) {
        this.catalogue = assortment.catalogue();
        this.assortment = assortment;
        this.setup = setup;
        this.base = base;
    }

    /**
     * The causes why the must-haves in the given rows cannot be met together. One cause that stands in the way of
     * several items is told once, with the item that comes nearest; the cause in most items' way comes first.
     */
    List<Blocked> of(List<Integer> rows) {
        List<Blocked> causes = new ArrayList<>();
        for (int row : rows) {
            if (isAttainable(row, new HashSet<>())) {
                causes.add(cause(Optional.empty(), row, Blocked.Rule.NOT_TOGETHER));
            } else {
                explain(row, Optional.empty(), new HashSet<>(), causes);
            }
        }
        return condensed(causes);
    }

    /** What a cause is, whichever item it stands in the way of. */
    private record Kind(CapabilityId of, Blocked.Rule rule) {}

    private static List<Blocked> condensed(List<Blocked> causes) {
        Map<Kind, List<Blocked>> byKind = new LinkedHashMap<>();
        for (Blocked cause : causes) {
            byKind.computeIfAbsent(new Kind(cause.of(), cause.rule()), key -> new ArrayList<>()).add(cause);
        }
        boolean onlyMadeForOthers = byKind.keySet().stream()
                .allMatch(kind -> kind.rule() == Blocked.Rule.NOT_FOR_CLASS);
        return byKind.entrySet().stream()
                .filter(entry -> onlyMadeForOthers || entry.getKey().rule() != Blocked.Rule.NOT_FOR_CLASS)
                .sorted(Comparator.comparing(entry -> -entry.getValue().size()))
                .map(entry -> entry.getValue().stream()
                        .min(Comparator.comparingDouble(Causes::shortfall))
                        .orElseThrow())
                .toList();
    }

    private static double shortfall(Blocked cause) {
        return cause.wanted()
                .flatMap(wanted -> cause.available().map(available -> Math.abs(wanted.si() - available.si())))
                .orElse(0.0);
    }

    private void explain(int row, Optional<ItemId> through, Set<Integer> seen, List<Blocked> causes) {
        if (!seen.add(row)) {
            return;
        }
        CapabilityId of = setup.rows().get(row).of();
        int before = causes.size();
        for (Item item : catalogue.items()) {
            if (!gives(item, row)) {
                continue;
            }
            Optional<ItemId> top = through.or(() -> Optional.of(item.id()));
            Optional<Assortment.Refusal> refusal = assortment.refusal(item);
            if (refusal.isPresent()) {
                causes.add(new Blocked(
                        top, refusal.get().of(), refusal.get().rule(), Optional.empty(), Optional.empty()));
            } else {
                for (int need : needsOf(item)) {
                    if (!isAttainable(need, new HashSet<>())) {
                        explain(need, top, seen, causes);
                    }
                }
            }
        }
        if (causes.size() == before) {
            causes.add(cause(through, row, leafRule(row, of)));
        }
    }

    private boolean gives(Item item, int row) {
        Setup.Row asked = setup.rows().get(row);
        return catalogue.effects(item).stream()
                .anyMatch(effect -> effect.of().equals(asked.of())
                        && (effect.amount().si() > 0) == (asked.relation() == Relation.AT_LEAST));
    }

    private Blocked.Rule leafRule(int row, CapabilityId of) {
        Setup.Row asked = setup.rows().get(row);
        if (asked.relation() == Relation.AT_MOST) {
            return Blocked.Rule.TOO_MUCH;
        }
        Optional<Feature> feature = of.featureName().map(FeatureId::new).flatMap(catalogue::findFeature);
        Optional<Assortment.Refusal> refusal = feature.flatMap(assortment::refusal);
        if (refusal.isPresent()) {
            return refusal.get().rule();
        }
        return asked.dimension() == Dimension.COUNT && reach(row) == 0
                ? Blocked.Rule.CANNOT_BE_ADDED
                : Blocked.Rule.TOO_LITTLE;
    }

    private Blocked cause(Optional<ItemId> item, int row, Blocked.Rule rule) {
        Setup.Row asked = setup.rows().get(row);
        boolean isNumber = asked.dimension() != Dimension.COUNT || asked.bound() > 1;
        Optional<Amount> wanted = isNumber ? Optional.of(asked.wanted()) : Optional.empty();
        Optional<Amount> available = isNumber ? Optional.of(asked.amount(reach(row))) : Optional.empty();
        return new Blocked(item, asked.of(), rule, wanted, available);
    }

    /** The most the row can come to with every item that can be had, what those need left aside. */
    private long reach(int row) {
        long reach = base[row];
        for (int i = 0; i < setup.items().size(); i++) {
            reach += Math.max(0, setup.rows().get(row).coefficient()[i]) * setup.items().get(i).max();
        }
        return reach;
    }

    private boolean isAttainable(int row, Set<Integer> open) {
        Setup.Row asked = setup.rows().get(row);
        if (base[row] >= asked.bound() || !open.add(row)) {
            return true;
        }
        long reach = base[row];
        for (int i = 0; i < setup.items().size(); i++) {
            if (asked.coefficient()[i] > 0
                    && needsOf(setup.items().get(i).item()).stream().allMatch(need -> isAttainable(need, open))) {
                reach += asked.coefficient()[i] * setup.items().get(i).max();
            }
        }
        open.remove(row);
        return reach >= asked.bound();
    }

    private List<Integer> needsOf(Item item) {
        List<Integer> rows = new ArrayList<>();
        for (int r = 0; r < setup.rows().size(); r++) {
            int owner = setup.rows().get(r).owner();
            if (owner >= 0 && setup.items().get(owner).item().equals(item)) {
                rows.add(r);
            }
        }
        return rows;
    }
}
