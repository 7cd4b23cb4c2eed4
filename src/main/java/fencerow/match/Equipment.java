package fencerow.match;

import fencerow.stock.Catalogue;
import fencerow.stock.Condition;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Capability;
import fencerow.terms.CapabilityId;
import fencerow.terms.Dimension;
import fencerow.terms.Effect;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.Figure;
import fencerow.terms.StateId;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What one unit gives by itself: its data sheet and the features known to be fitted. */
final class Equipment {
    /** What only a machine nobody has owned gives. */
    private static final CapabilityId NEW_MACHINE = new CapabilityId("new-machine");

    private static final Map<String, Figure> FIGURES = figuresById();

    private final Catalogue catalogue;
    private final Unit unit;
    private final Map<CapabilityId, List<Effect>> known = new HashMap<>();
    private final Map<Feature, Fact.Unverified> unverified = new LinkedHashMap<>();

    Equipment(Catalogue catalogue, Unit unit) {
        this.catalogue = catalogue;
        this.unit = unit;
        if (unit.condition() == Condition.NEW) {
            known.computeIfAbsent(NEW_MACHINE, of -> new ArrayList<>()).add(Effect.one(NEW_MACHINE));
        }
        for (Feature feature : catalogue.features()) {
            Fact fact = unit.fact(feature.id());
            if (fact instanceof Fact.Unverified open) {
                unverified.put(feature, open);
            }
            for (Effect effect : effects(feature, fact)) {
                known.computeIfAbsent(effect.of(), of -> new ArrayList<>()).add(effect);
            }
        }
    }

    /** Features nobody has checked, with what each may turn out to be. */
    Map<Feature, Fact.Unverified> unverified() {
        return unverified;
    }

    /** What the feature does in the given state of affairs, counted as often as it is fitted. */
    static List<Effect> effects(Feature feature, Fact fact) {
        if (!(fact instanceof Fact.Fitted fitted)) {
            return List.of();
        }
        return feature.effects(fitted.kind()).stream()
                .map(effect -> effect.times(fitted.count()))
                .toList();
    }

    /** What the capability measures. */
    static Dimension dimension(Catalogue catalogue, CapabilityId of) {
        return catalogue.findCapability(of)
                .map(Capability::dimension)
                .orElseGet(() -> findFigure(of).map(Figure::dimension).orElse(Dimension.COUNT));
    }

    /** Whether the best single source counts rather than the sum. */
    static boolean isMax(Catalogue catalogue, CapabilityId of) {
        return catalogue.findCapability(of)
                .map(capability -> capability.combine() == Capability.Combine.MAX)
                .orElse(false);
    }

    /** The unit's own amount of the capability in the state, in steps; unverified features not counted. */
    long own(CapabilityId of, StateId in) {
        long amount = findFigure(of).map(this::figure).orElse(0L);
        Optional<Capability> declared = catalogue.findCapability(of);
        if (declared.isPresent()) {
            amount += declared.get().supply();
            for (Figure figure : declared.get().own()) {
                amount += figure(figure);
            }
        }
        return isMax(catalogue, of)
                ? Math.max(amount, largest(known.getOrDefault(of, List.of()), of, in))
                : amount + sum(known.getOrDefault(of, List.of()), of, in);
    }

    private long figure(Figure figure) {
        return unit.model().findFigure(figure).map(Amount::steps).orElse(0L);
    }

    /** The sum of the effects on the capability that count in the state, in steps. */
    static long sum(List<Effect> effects, CapabilityId of, StateId in) {
        long sum = 0;
        for (Effect effect : effects) {
            if (effect.of().equals(of) && effect.countsIn(in)) {
                sum += effect.amount().steps();
            }
        }
        return sum;
    }

    /** The largest of the effects on the capability that count in the state, in steps; at least nothing. */
    static long largest(List<Effect> effects, CapabilityId of, StateId in) {
        long largest = 0;
        for (Effect effect : effects) {
            if (effect.of().equals(of) && effect.countsIn(in)) {
                largest = Math.max(largest, effect.amount().steps());
            }
        }
        return largest;
    }

    private static Optional<Figure> findFigure(CapabilityId of) {
        return Optional.ofNullable(FIGURES.get(of.value()));
    }

    private static Map<String, Figure> figuresById() {
        Map<String, Figure> byId = new HashMap<>();
        for (Figure figure : Figure.values()) {
            byId.put(figure.id(), figure);
        }
        return Map.copyOf(byId);
    }
}
