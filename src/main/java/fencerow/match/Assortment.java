package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.AddOn;
import fencerow.stock.Availability;
import fencerow.stock.Catalogue;
import fencerow.stock.Fitter;
import fencerow.stock.Item;
import fencerow.stock.PriceBook;
import fencerow.stock.Unit;
import fencerow.terms.CapabilityId;
import fencerow.terms.Effect;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Offering;
import fencerow.terms.PriceRange;
import java.util.Optional;

/** Which items of the catalogue can be had for one unit and one shopper, and at what price. */
record Assortment(Catalogue catalogue, Unit unit, Needs needs) {

    /** Why an item cannot be had. */
    record Refusal(Blocked.Rule rule, CapabilityId of) {}

    /** The reason why the item cannot be had; empty if it can. */
    Optional<Refusal> refusal(Item item) {
        if (isFree(item)) {
            return Optional.empty();
        }
        CapabilityId itself = item instanceof AddOn addOn
                ? addOn.gives().stream().findFirst().map(Effect::of).orElse(CapabilityId.has(item.id()))
                : CapabilityId.has(item.id());
        if (!item.classes().contains(unit.model().machineClass())) {
            return Optional.of(new Refusal(Blocked.Rule.NOT_FOR_CLASS, itself));
        }
        Optional<Refusal> byOffering = refusalByOffering(item);
        if (byOffering.isPresent()) {
            return byOffering;
        }
        if (item instanceof AddOn addOn && addOn.by() == Fitter.FACTORY && !isOrdered()) {
            return Optional.of(new Refusal(Blocked.Rule.FACTORY_ONLY, itself));
        }
        if (findPrice(item).isEmpty()) {
            boolean atOrder = catalogue.prices().findPrice(item.id(), unit.model().machineClass())
                    .flatMap(PriceBook.ItemPrice::order)
                    .isPresent();
            return Optional.of(
                    new Refusal(atOrder ? Blocked.Rule.FACTORY_ONLY : Blocked.Rule.NOT_SOLD_HERE, itself));
        }
        if (isStopgapForTooLong(item, needs)) {
            return Optional.of(new Refusal(Blocked.Rule.TOO_MANY_HOURS, itself));
        }
        return Optional.empty();
    }

    /** Whether the item is a stopgap for fewer hours a year than the tractor will run. */
    static boolean isStopgapForTooLong(Item item, Needs needs) {
        return needs.hoursPerYear().isPresent()
                && item.stopgapHours().isPresent()
                && item.stopgapHours().getAsInt() < needs.hoursPerYear().getAsDouble();
    }

    private Optional<Refusal> refusalByOffering(Item item) {
        for (Effect effect : item.gives()) {
            Optional<Refusal> refusal = effect.of()
                    .featureName()
                    .filter(name -> effect.amount().si() > 0)
                    .flatMap(name -> catalogue.findFeature(new FeatureId(name)))
                    .flatMap(this::refusal);
            if (refusal.isPresent()) {
                return refusal;
            }
        }
        return Optional.empty();
    }

    /** Why the feature cannot be put on this unit by anything; empty if its offering allows it. */
    Optional<Refusal> refusal(Feature feature) {
        Offering offering = unit.model().offeringOf(feature);
        if (offering == Offering.NEVER) {
            return Optional.of(new Refusal(Blocked.Rule.NEVER_ON_MODEL, CapabilityId.of(feature.id())));
        }
        if (offering == Offering.FACTORY_ONLY && !isOrdered()) {
            return Optional.of(new Refusal(Blocked.Rule.FACTORY_ONLY, CapabilityId.of(feature.id())));
        }
        return Optional.empty();
    }

    /** What is asked for one of the item on this unit: the order-time price where the unit is still to be ordered. */
    Optional<PriceRange> findPrice(Item item) {
        Optional<PriceBook.ItemPrice> price =
                catalogue.prices().findPrice(item.id(), unit.model().machineClass());
        Optional<PriceRange> later = price.flatMap(PriceBook.ItemPrice::later);
        return isOrdered() ? price.flatMap(PriceBook.ItemPrice::order).or(() -> later) : later;
    }

    private boolean isFree(Item item) {
        return needs.owned().contains(item.id()) || unit.bundled().contains(item.id());
    }

    private boolean isOrdered() {
        return unit.availability() == Availability.ORDERABLE;
    }
}
