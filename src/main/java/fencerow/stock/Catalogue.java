package fencerow.stock;

import fencerow.terms.Capability;
import fencerow.terms.CapabilityId;
import fencerow.terms.Effect;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.ItemId;
import fencerow.terms.ModelId;
import java.util.ArrayList;
import java.util.Collection;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Everything the trade offers: features, capabilities, add-ons, attachments, models and this showroom's prices.
 * Iteration follows the order of the files.
 */
public final class Catalogue {
    private final Map<FeatureId, Feature> features;
    private final Map<CapabilityId, Capability> capabilities;
    private final Map<ItemId, Item> items;
    private final Map<ModelId, Model> models;
    private final PriceBook prices;
    private final Map<ItemId, List<Effect>> effects = new HashMap<>();

    /** Takes copies; ids are unique within each collection. */
    public Catalogue(
            Collection<Feature> features,
            Collection<Capability> capabilities,
            Collection<? extends Item> items,
            Collection<Model> models,
            PriceBook prices) {
        this.features = byId(features, Feature::id);
        this.capabilities = byId(capabilities, Capability::id);
        this.items = byId(items, Item::id);
        this.models = byId(models, Model::id);
        this.prices = prices;
        this.items.values().forEach(item -> effects.put(item.id(), withWhatFeaturesGive(item)));
    }

    /** A feature that an item gives does all it would do if it had come from the factory. */
    private List<Effect> withWhatFeaturesGive(Item item) {
        List<Effect> all = new ArrayList<>();
        for (Effect effect : item.allEffects()) {
            Optional<Feature> feature = effect.of().featureName().map(FeatureId::new).flatMap(this::findFeature);
            if (feature.isPresent() && effect.amount().si() > 0) {
                int count = (int) effect.amount().si();
                feature.get().effects(effect.of().kindName()).forEach(brought -> all.add(brought.times(count)));
            } else {
                all.add(effect);
            }
        }
        return List.copyOf(all);
    }

    /**
     * Everything one piece of the item does, what the features it gives do among it.
     *
     * @throws IllegalArgumentException if the item is not of this catalogue
     */
    public List<Effect> effects(Item item) {
        List<Effect> known = effects.get(item.id());
        if (known == null) {
            throw new IllegalArgumentException("item [" + item.id() + "] is not in the catalogue");
        }
        return known;
    }

    private static <K, V> Map<K, V> byId(Collection<? extends V> all, Function<V, K> id) {
        return all.stream().collect(Collectors.toMap(id, Function.identity(), (a, b) -> {
            throw new IllegalArgumentException("two records have the id [" + id.apply(a) + "]; rename one");
        }, LinkedHashMap::new));
    }

    /** All features, in display order. */
    public List<Feature> features() {
        return List.copyOf(features.values());
    }

    /** The declared capabilities. */
    public List<Capability> capabilities() {
        return List.copyOf(capabilities.values());
    }

    /** All add-ons and attachments. */
    public List<Item> items() {
        return List.copyOf(items.values());
    }

    /** All models. */
    public List<Model> models() {
        return List.copyOf(models.values());
    }

    /** The showroom's prices. */
    public PriceBook prices() {
        return prices;
    }

    /** The feature with the id. */
    public Optional<Feature> findFeature(FeatureId id) {
        return Optional.ofNullable(features.get(id));
    }

    /** The feature with the id. @throws IllegalArgumentException if there is none */
    public Feature getFeature(FeatureId id) {
        return findFeature(id).orElseThrow(() -> new IllegalArgumentException("there is no feature [" + id + "]"));
    }

    /** The declared capability with the id. */
    public Optional<Capability> findCapability(CapabilityId id) {
        return Optional.ofNullable(capabilities.get(id));
    }

    /** The add-on or attachment with the id. */
    public Optional<Item> findItem(ItemId id) {
        return Optional.ofNullable(items.get(id));
    }

    /** The model with the id. */
    public Optional<Model> findModel(ModelId id) {
        return Optional.ofNullable(models.get(id));
    }

    /** Add-ons that give the feature, in file order. */
    public List<AddOn> addOnsFor(FeatureId feature) {
        CapabilityId wanted = CapabilityId.of(feature);
        return items.values().stream()
                .filter(AddOn.class::isInstance)
                .map(AddOn.class::cast)
                .filter(addOn -> effects(addOn).stream()
                        .anyMatch(effect -> effect.of().equals(wanted) && effect.amount().si() > 0))
                .toList();
    }
}
