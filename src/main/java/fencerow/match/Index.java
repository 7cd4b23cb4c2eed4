package fencerow.match;

import fencerow.stock.Catalogue;
import fencerow.stock.Item;
import fencerow.terms.Capability;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.Feature;
import fencerow.terms.Figure;
import fencerow.terms.ItemId;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;

/** The catalogue's items, features and capabilities numbered, and what touches what. Made once for a catalogue. */
final class Index {
    private final Catalogue catalogue;
    private final Measures measures;
    private final List<Item> items;
    private final List<Feature> features;
    private final Map<ItemId, Integer> placeOfItem = new HashMap<>();
    private final Map<CapabilityId, Integer> numbers = new HashMap<>();
    private final List<CapabilityId> capabilities = new ArrayList<>();
    private final Map<CapabilityId, List<Integer>> itemsTouching = new HashMap<>();
    private final Map<CapabilityId, List<Integer>> featuresTouching = new HashMap<>();
    private final List<Set<Integer>> excludes = new ArrayList<>();
    private final Map<CapabilityId, Feature> countedBy = new LinkedHashMap<>();

    Index(Catalogue catalogue) {
        this.catalogue = catalogue;
        this.measures = new Measures(catalogue);
        this.items = catalogue.items();
        this.features = catalogue.features();
        for (int i = 0; i < items.size(); i++) {
            placeOfItem.put(items.get(i).id(), i);
            touches(i, catalogue.effects(items.get(i)), itemsTouching);
            items.get(i).needs().forEach(need -> number(need.of()));
        }
        items.forEach(item -> excludes.add(new TreeSet<>()));
        for (Item item : items) {
            int place = placeOf(item.id());
            item.excludes().stream().map(this::placeOf).filter(other -> other >= 0).forEach(other -> {
                excludes.get(place).add(other);
                excludes.get(other).add(place);
            });
        }
        for (int f = 0; f < features.size(); f++) {
            touches(f, everything(features.get(f)), featuresTouching);
            countedBy.put(CapabilityId.of(features.get(f).id()), features.get(f));
        }
        catalogue.capabilities().stream().map(Capability::id).forEach(this::number);
        Stream.of(Figure.values()).map(CapabilityId::of).forEach(this::number);
    }

    private static List<Effect> everything(Feature feature) {
        List<Effect> all = new ArrayList<>(feature.effects(Optional.empty()));
        feature.kinds().forEach(kind -> all.addAll(feature.effects(Optional.of(kind))));
        return all;
    }

    private void touches(int place, List<Effect> effects, Map<CapabilityId, List<Integer>> touching) {
        Set<CapabilityId> of = new LinkedHashSet<>();
        effects.forEach(effect -> of.add(effect.of()));
        for (CapabilityId each : of) {
            number(each);
            touching.computeIfAbsent(each, key -> new ArrayList<>()).add(place);
        }
    }

    private void number(CapabilityId of) {
        if (numbers.putIfAbsent(of, numbers.size()) == null) {
            capabilities.add(of);
        }
    }

    Catalogue catalogue() {
        return catalogue;
    }

    Measures measures() {
        return measures;
    }

    /** All items, in catalogue order. */
    List<Item> items() {
        return items;
    }

    /** All features, in catalogue order. */
    List<Feature> features() {
        return features;
    }

    /** The capability that counts each feature. */
    Map<CapabilityId, Feature> countedBy() {
        return countedBy;
    }

    /** The feature that the capability counts. */
    Optional<Feature> findFeature(CapabilityId of) {
        return Optional.ofNullable(countedBy.get(of));
    }

    /** Every capability that the catalogue speaks of. */
    List<CapabilityId> capabilities() {
        return capabilities;
    }

    /** The capability's place among all; -1 if the catalogue never speaks of it. */
    int numberOf(CapabilityId of) {
        return numbers.getOrDefault(of, -1);
    }

    private int placeOf(ItemId item) {
        return placeOfItem.getOrDefault(item, -1);
    }

    /** Places of the items that cannot be there with the item, whichever of the two says so. */
    Set<Integer> excludes(int item) {
        return excludes.get(item);
    }

    /** Places of the items that change the capability. */
    List<Integer> itemsTouching(CapabilityId of) {
        return itemsTouching.getOrDefault(of, List.of());
    }

    /** Places of the features that change any of the capabilities, rising. */
    int[] featuresTouching(Set<CapabilityId> any) {
        return any.stream()
                .flatMap(of -> featuresTouching.getOrDefault(of, List.of()).stream())
                .mapToInt(Integer::intValue)
                .sorted()
                .distinct()
                .toArray();
    }

    /** What one piece of the item comes to for the demand, in steps. */
    long raw(int item, Demand demand) {
        return measures.raw(catalogue.effects(items.get(item)), demand);
    }

    /** Places of the items that give toward the demand. */
    List<Integer> givers(Demand demand) {
        boolean least = demand.relation() == Relation.AT_LEAST;
        List<Integer> givers = new ArrayList<>();
        for (int item : itemsTouching(demand.of())) {
            long raw = raw(item, demand);
            if (least ? raw > 0 : raw < 0) {
                givers.add(item);
            }
        }
        return givers;
    }
}
