package fencerow.match;

import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.Arrays;
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
    private final Kind kind;
    private final Setup setup;
    private final long[] headroom;

    /** Looks for causes on a unit of the kind with so much headroom in each row. */
    Causes(Assortment assortment, Kind kind, long[] headroom) {
        this.catalogue = assortment.catalogue();
        this.assortment = assortment;
        this.kind = kind;
        this.setup = kind.setup();
        this.headroom = headroom;
    }

    /**
     * The causes why the must-haves in the given rows cannot be met together. One cause that stands in the way of
     * several items is told once, with the item that comes nearest; the cause in most items' way comes first.
     */
    List<Blocked> of(List<Integer> rows) {
        List<Blocked> causes = new ArrayList<>();
        List<Integer> unattainable =
                rows.stream().filter(row -> !isAttainable(row, new HashSet<>())).toList();
        for (int row : unattainable) {
            explain(row, Optional.empty(), new HashSet<>(), causes);
        }
        if (unattainable.isEmpty()) {
            rows.forEach(row -> causes.add(cause(Optional.empty(), row, Blocked.Rule.NOT_TOGETHER)));
        }
        return condensed(causes);
    }

    /** What a cause is, whichever item it stands in the way of. */
    private record Sort(CapabilityId of, Blocked.Rule rule) {}

    private static List<Blocked> condensed(List<Blocked> causes) {
        Map<Sort, List<Blocked>> bySort = new LinkedHashMap<>();
        for (Blocked cause : causes) {
            bySort.computeIfAbsent(new Sort(cause.of(), cause.rule()), key -> new ArrayList<>()).add(cause);
        }
        boolean onlyMadeForOthers = bySort.keySet().stream()
                .allMatch(sort -> sort.rule() == Blocked.Rule.NOT_FOR_CLASS);
        return bySort.entrySet().stream()
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

    private void explain(int row, Optional<ItemId> through, Set<Integer> open, List<Blocked> causes) {
        if (!open.add(row)) {
            return;
        }
        int before = causes.size();
        Index index = kind.layout().index();
        for (int giver : index.givers(demand(row))) {
            Item item = index.items().get(giver);
            Optional<ItemId> top = through.or(() -> Optional.of(item.id()));
            Optional<Assortment.Refusal> refusal = assortment.refusal(item);
            if (refusal.isPresent()) {
                causes.add(new Blocked(
                        top, refusal.get().of(), refusal.get().rule(), Optional.empty(), Optional.empty()));
            } else {
                for (int need : needsOf(item)) {
                    if (!isAttainable(need, new HashSet<>())) {
                        explain(need, top, open, causes);
                    }
                }
            }
        }
        if (causes.size() == before) {
            causes.add(cause(through, row, leafRule(row)));
        }
        open.remove(row); // another item's way may lead here too, and has its own item to name
    }

    private Blocked.Rule leafRule(int row) {
        Demand asked = demand(row);
        if (asked.relation() == Relation.AT_MOST) {
            boolean isNone = kind.dimension(row) == Dimension.COUNT && kind.wanted(row).steps() <= 0;
            return isNone ? Blocked.Rule.IN_THE_WAY : Blocked.Rule.TOO_MUCH;
        }
        Optional<Feature> feature = asked.of().featureName().map(FeatureId::new).flatMap(catalogue::findFeature);
        Optional<Assortment.Refusal> refusal = feature.flatMap(assortment::refusal);
        if (refusal.isPresent()) {
            return refusal.get().rule();
        }
        boolean none = kind.amount(row, reach(row)).filter(most -> most.steps() > 0).isEmpty();
        return kind.dimension(row) == Dimension.COUNT && none
                ? Blocked.Rule.CANNOT_BE_ADDED
                : Blocked.Rule.TOO_LITTLE;
    }

    private Blocked cause(Optional<ItemId> item, int row, Blocked.Rule rule) {
        Amount wanted = kind.wanted(row);
        boolean isNumber = wanted.dimension() != Dimension.COUNT || wanted.steps() > 1;
        return new Blocked(
                item,
                demand(row).of(),
                rule,
                isNumber ? Optional.of(wanted) : Optional.empty(),
                isNumber ? kind.amount(row, reach(row)) : Optional.empty(),
                Optional.of(demand(row).in()).filter(state -> !state.equals(Demand.ANY_STATE)));
    }

    private Demand demand(int row) {
        return kind.layout().conditions().get(row).demand();
    }

    /** The most headroom the row can come to with every item that can be had, what those need left aside. */
    private long reach(int row) {
        long reach = headroom[row];
        Sparse change = setup.rows().get(row).change();
        for (int k = 0; k < change.size(); k++) {
            reach += Math.max(0, change.amounts()[k]) * setup.items().most()[change.places()[k]];
        }
        return reach;
    }

    private boolean isAttainable(int row, Set<Integer> open) {
        if (headroom[row] >= 0 || !open.add(row)) {
            return true;
        }
        long reach = headroom[row];
        Sparse change = setup.rows().get(row).change();
        for (int k = 0; k < change.size(); k++) {
            int item = change.places()[k];
            if (change.amounts()[k] > 0
                    && Arrays.stream(needsOf(item)).allMatch(need -> isAttainable(need, open))) {
                reach += change.amounts()[k] * setup.items().most()[item];
            }
        }
        open.remove(row);
        return reach >= 0;
    }

    private int[] needsOf(Item item) {
        int column = kind.layout().items().indexOf(item);
        return column < 0 ? new int[0] : needsOf(column);
    }

    private int[] needsOf(int column) {
        return kind.layout().links().needs()[column];
    }
}
