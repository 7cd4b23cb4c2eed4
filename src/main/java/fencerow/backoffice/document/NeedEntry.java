package fencerow.backoffice.document;

import fencerow.needs.Requirement;
import fencerow.stock.Catalogue;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Relation;
import fencerow.terms.Threshold;
import fencerow.wording.Phrases;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * One thing the work needs from a machine.
 *
 * @param id      stable for the same answers
 * @param of      the capability asked for, such as {@code does:clear-snow}, {@code pto-power} or
 *                {@code quick-attach.plate}
 * @param kind    {@code flag}: there or not; {@code kind}: fitted as one of several kinds; {@code count}: so many of
 *                them; {@code at-least} and {@code at-most}: an amount
 * @param must    whether it is a must-have rather than a wish
 * @param weight  how much a wish counts against others; 1 for must-haves
 * @param states  the working states it is asked in, the worst deciding; {@code any} where what is mounted makes no
 *                difference
 * @param amount  how much, 1 for a flag or a kind; null where it has to be worked out for each machine
 * @param unit    of the amount: an SI symbol, empty for counts
 * @param from    what an amount that has to be worked out is worked out from; else empty
 * @param reason  the answer that led to it and what that asks for, as a sentence
 */
public record NeedEntry(
        String id,
        String of,
        String kind,
        boolean must,
        int weight,
        List<String> states,
        Optional<BigDecimal> amount,
        String unit,
        List<Source> from,
        String reason) {
    /**
     * One amount that a needed amount is worked out from.
     *
     * @param what   {@code load} at the loader, {@code tool} on the hitch, {@code area} to be mown, or {@code time} to
     *               mow it in
     * @param amount how much
     * @param unit   an SI symbol
     */
    public record Source(String what, BigDecimal amount, String unit) {
        private static Source of(String what, Amount amount) {
            return new Source(what, Numbers.si(amount), amount.dimension().symbol());
        }
    }

    /** The entry of a requirement. */
    static NeedEntry of(Requirement requirement, Catalogue catalogue, Phrases phrases) {
        Threshold threshold = requirement.demand().threshold();
        Optional<BigDecimal> amount = Optional.empty();
        List<Source> from = List.of();
        Dimension dimension;
        if (threshold instanceof Threshold.Fixed fixed) {
            amount = Optional.of(Numbers.si(fixed.amount()));
            dimension = fixed.amount().dimension();
        } else if (threshold instanceof Threshold.Counterweight counterweight) {
            from = List.of(Source.of("load", counterweight.load()));
            dimension = Dimension.MASS;
        } else if (threshold instanceof Threshold.Payload payload) {
            from = List.of(Source.of("load", payload.load()));
            dimension = Dimension.MASS;
        } else if (threshold instanceof Threshold.SteeringWeight steering) {
            from = List.of(Source.of("tool", steering.tool()));
            dimension = Dimension.MASS;
        } else {
            var mowing = (Threshold.MowingWidth) threshold;
            from = List.of(Source.of("area", mowing.area()), Source.of("time", mowing.time()));
            dimension = Dimension.LENGTH;
        }
        return new NeedEntry(
                requirement.id(),
                requirement.demand().of().value(),
                kind(requirement, catalogue),
                requirement.must(),
                requirement.weight(),
                requirement.demands().stream().map(demand -> demand.in().value()).toList(),
                amount,
                dimension.symbol(),
                from,
                phrases.chain(requirement));
    }

    private static String kind(Requirement requirement, Catalogue catalogue) {
        Relation relation = requirement.demand().relation();
        Threshold threshold = requirement.demand().threshold();
        if (relation == Relation.AT_MOST
                || !(threshold instanceof Threshold.Fixed fixed)
                || fixed.amount().dimension() != Dimension.COUNT) {
            return relation.id();
        }
        CapabilityId of = requirement.demand().of();
        if (of.kindName().isPresent()) {
            return "kind";
        }
        Optional<Feature> feature = of.featureName().map(FeatureId::new).flatMap(catalogue::findFeature);
        boolean several = feature.map(Feature::most).orElse(1) > 1;
        return several || fixed.amount().si() > 1 ? "count" : "flag";
    }
}
