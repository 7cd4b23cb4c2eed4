package fencerow.visit;

import fencerow.stock.AskingPrice;
import fencerow.stock.Availability;
import fencerow.stock.Catalogue;
import fencerow.stock.Condition;
import fencerow.stock.Model;
import fencerow.stock.Unit;
import fencerow.stock.UsualModel;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.Offering;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.stream.IntStream;

/**
 * Another seller's tractor, as a shopper tells of it. What they do not tell stays unknown.
 *
 * @param machineClass how big it is
 * @param condition    how it comes to the seller
 * @param hours        on the meter, where told
 * @param price        what the seller asks and allows for a trade-in; lines not told are nothing
 * @param seen         for each feature told of, whether it is there
 */
public record SecondQuote(
        MachineClass machineClass,
        Condition condition,
        OptionalInt hours,
        AskingPrice price,
        Map<FeatureId, Boolean> seen) {
    /** The id of the unit it becomes. */
    public static final UnitId ID = new UnitId("second-quote");

    private static final int MOST_TOLD_APART = 6;

    /** Copies the map. */
    public SecondQuote {
        seen = Map.copyOf(seen);
        price = price.allowing(Money.ZERO);
    }

    /** Nothing told yet but size and condition. */
    public static SecondQuote of(MachineClass machineClass, Condition condition) {
        return new SecondQuote(machineClass, condition, OptionalInt.empty(),
                new AskingPrice(Money.ZERO, Optional.empty(), Money.ZERO, Money.ZERO, Money.ZERO), Map.of());
    }

    /** What was told of the unit that an earlier quote became. */
    public static SecondQuote of(Unit unit, Catalogue catalogue) {
        Map<FeatureId, Boolean> seen = new HashMap<>();
        for (Feature feature : catalogue.features()) {
            if (isAsked(feature, unit.model())) {
                Fact fact = unit.fact(feature.id());
                if (fact instanceof Fact.Absent) {
                    seen.put(feature.id(), false);
                } else if (!canBeAbsent(fact)) {
                    seen.put(feature.id(), true);
                }
            }
        }
        return new SecondQuote(unit.model().machineClass(), unit.condition(), unit.hours(), unit.price(), seen);
    }

    private static boolean canBeAbsent(Fact fact) {
        return fact instanceof Fact.Unverified unverified && unverified.possible().contains(Fact.absent());
    }

    /** Whether a shopper can tell of the feature: not where every machine of the size has it, or none. */
    private static boolean isAsked(Feature feature, Model model) {
        Offering offering = model.offeringOf(feature);
        return offering != Offering.INCLUDED && offering != Offering.NEVER;
    }

    /** The features of which a machine of the size may or may not have, in the catalogue's order. */
    public List<Feature> askable(Catalogue catalogue) {
        return UsualModel.of(machineClass, catalogue).stream()
                .flatMap(model -> catalogue.features().stream().filter(feature -> isAsked(feature, model)))
                .toList();
    }

    /** With other hours. */
    public SecondQuote withHours(OptionalInt other) {
        return new SecondQuote(machineClass, condition, other, price, seen);
    }

    /** With another price. */
    public SecondQuote withPrice(AskingPrice other) {
        return new SecondQuote(machineClass, condition, hours, other, seen);
    }

    /** Of another size or condition; what was told of its price and equipment stays. */
    public SecondQuote with(MachineClass size, Condition state) {
        return new SecondQuote(size, state, state == Condition.NEW ? OptionalInt.empty() : hours, price, seen);
    }

    /** With a feature told of; empty takes it back. */
    public SecondQuote with(FeatureId feature, Optional<Boolean> there) {
        Map<FeatureId, Boolean> next = new HashMap<>(seen);
        next.remove(feature);
        there.ifPresent(is -> next.put(feature, is));
        return new SecondQuote(machineClass, condition, hours, price, next);
    }

    /**
     * The unit to hold against the needs; a stand-in with the usual figures of its size.
     *
     * @throws IllegalArgumentException if the catalogue has no model of the size
     */
    public Unit unit(Catalogue catalogue) {
        Model model = UsualModel.of(machineClass, catalogue).orElseThrow(() -> new IllegalArgumentException(
                "there is no model of class [" + machineClass.id() + "] to take usual figures from; add one"));
        Map<FeatureId, Fact> facts = new HashMap<>();
        catalogue.features().forEach(feature -> facts.put(feature.id(), fact(feature, model)));
        return new Unit(ID, model, condition, OptionalInt.empty(), hours, Availability.IN_STOCK, 0, price, facts,
                Set.of(), List.of());
    }

    private Fact fact(Feature feature, Model model) {
        Offering offering = model.offeringOf(feature);
        Optional<Boolean> told = Optional.ofNullable(seen.get(feature.id()));
        if (offering == Offering.NEVER || told.isPresent() && !told.get()) {
            return Fact.absent();
        }
        List<Fact> possible = new ArrayList<>(fittings(feature, told.isPresent() ? 1 : feature.most()));
        if (offering != Offering.INCLUDED && told.isEmpty()) {
            possible.add(0, Fact.absent());
        }
        return possible.size() == 1 ? possible.get(0) : new Fact.Unverified(possible);
    }

    private static List<Fact> fittings(Feature feature, int most) {
        if (!feature.kinds().isEmpty()) {
            return feature.kinds().stream()
                    .map(kind -> (Fact) new Fact.Fitted(1, Optional.of(kind)))
                    .toList();
        }
        return IntStream.rangeClosed(1, Math.min(most, MOST_TOLD_APART))
                .mapToObj(count -> (Fact) new Fact.Fitted(count, Optional.empty()))
                .toList();
    }
}
