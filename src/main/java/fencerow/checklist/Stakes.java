package fencerow.checklist;

import fencerow.needs.Requirement;
import fencerow.stock.AddOn;
import fencerow.stock.Catalogue;
import fencerow.stock.PriceBook;
import fencerow.terms.AtStake;
import fencerow.terms.FeatureId;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;

/**
 * What a wrong belief about a feature costs this shopper.
 *
 * @param catalogue prices
 * @param classes   the machine classes the shopper is looking at; not empty
 * @param relevance of the features to the shopper's work
 * @param weights   how much relevance counts
 */
public record Stakes(Catalogue catalogue, Set<MachineClass> classes, Relevance relevance, Weights weights) {
    /** Copies the classes. */
    public Stakes {
        classes = Set.copyOf(classes);
    }

    /**
     * What is at stake: the price of having the feature put on later on the classes looked at, from the cheapest way's
     * low to its high; where nobody can put it on later, the price at order; the job itself where its lack cannot be
     * put right and keeps a unit from a must-have.
     */
    public AtStake of(FeatureId feature) {
        List<AddOn> addOns = catalogue.addOnsFor(feature);
        Optional<PriceRange> later = cheapest(addOns, PriceBook.ItemPrice::later);
        PriceRange money = later.or(() -> cheapest(addOns, PriceBook.ItemPrice::order)).orElse(PriceRange.ZERO);
        return new AtStake(money, relevance.costsTheJob(feature));
    }

    /** How much the feature counts for this shopper, 0 to 1. */
    public double weight(FeatureId feature) {
        Optional<Requirement> requirement = relevance.requirement(feature);
        if (requirement.isEmpty()) {
            return weights.other();
        }
        return requirement.get().must() ? weights.must() : weights.wish();
    }

    private Optional<PriceRange> cheapest(
            List<AddOn> addOns, Function<PriceBook.ItemPrice, Optional<PriceRange>> when) {
        return addOns.stream()
                .flatMap(addOn -> spread(addOn, when).stream())
                .min(Comparator.comparing(PriceRange::middle));
    }

    /** From the lowest to the highest price of the add-on over the classes looked at. */
    private Optional<PriceRange> spread(
            AddOn addOn, Function<PriceBook.ItemPrice, Optional<PriceRange>> when) {
        List<PriceRange> prices = classes.stream()
                .flatMap(each -> catalogue.prices().findPrice(addOn.id(), each).stream())
                .flatMap(price -> when.apply(price).stream())
                .toList();
        Stream<Money> lows = prices.stream().map(PriceRange::low);
        Stream<Money> highs = prices.stream().map(PriceRange::high);
        return lows.min(Comparator.naturalOrder())
                .map(low -> new PriceRange(low, highs.max(Comparator.naturalOrder()).orElse(low)));
    }
}
