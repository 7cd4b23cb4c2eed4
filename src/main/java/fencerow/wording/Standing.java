package fencerow.wording;

import fencerow.stock.AddOn;
import fencerow.stock.Availability;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.Offering;
import fencerow.terms.PriceRange;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * How a feature stands on one unit.
 *
 * @param kind  there, to be had, not there, never, or not known
 * @param words the same, with the price where it can be had
 */
public record Standing(Kind kind, String words) {
    /** The ways a feature can stand. */
    public enum Kind {
        /** It is fitted. */
        THERE,
        /** It is not, and can be had for money. */
        EXTRA,
        /** It is not, and nobody here sells it for this unit. */
        MISSING,
        /** It is not, and cannot be had on this unit. */
        NEVER,
        /** Nobody has looked. */
        UNKNOWN
    }

    /** How the feature stands on the unit. */
    public static Standing of(Unit unit, Feature feature, Catalogue catalogue, Phrases phrases) {
        Texts texts = phrases.texts();
        Fact fact = unit.fact(feature.id());
        if (fact instanceof Fact.Fitted fitted) {
            return new Standing(Kind.THERE, there(feature, fitted, texts));
        }
        if (fact instanceof Fact.Unverified) {
            return new Standing(Kind.UNKNOWN, texts.get("standing.unknown"));
        }
        Offering offering = unit.model().offeringOf(feature);
        boolean toOrder = unit.availability() == Availability.ORDERABLE;
        if (offering == Offering.NEVER || offering == Offering.FACTORY_ONLY && !toOrder) {
            return new Standing(Kind.NEVER, texts.get("standing." + offering.id()));
        }
        return price(unit, feature, catalogue, toOrder)
                .map(range -> new Standing(
                        Kind.EXTRA, texts.get("standing.extra", Map.of("range", phrases.range(range)))))
                .orElseGet(() -> new Standing(Kind.MISSING, texts.get("standing.missing")));
    }

    private static String there(Feature feature, Fact.Fitted fitted, Texts texts) {
        Optional<String> kind = fitted.kind().flatMap(each -> texts.find("feature." + feature.id() + ".kind." + each));
        if (kind.isPresent()) {
            return texts.get("standing.kind", Map.of("kind", kind.get()));
        }
        return feature.most() > 1
                ? texts.get("standing.count", Map.of("count", fitted.count()))
                : texts.get("standing.there");
    }

    private static Optional<PriceRange> price(Unit unit, Feature feature, Catalogue catalogue, boolean toOrder) {
        List<AddOn> addOns = catalogue.addOnsFor(feature.id());
        return addOns.stream()
                .flatMap(addOn -> catalogue.prices().findPrice(addOn.id(), unit.model().machineClass()).stream())
                .flatMap(price -> (toOrder ? price.order().or(price::later) : price.later()).stream())
                .min(Comparator.comparing(PriceRange::middle));
    }
}
