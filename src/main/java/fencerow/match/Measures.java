package fencerow.match;

import fencerow.stock.Catalogue;
import fencerow.stock.Condition;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.Capability;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Effect;
import fencerow.terms.Figure;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** How capabilities are counted: what they measure, where they start, and how several sources go together. */
record Measures(Catalogue catalogue) {
    /** What only a machine nobody has owned gives. */
    private static final CapabilityId NEW_MACHINE = new CapabilityId("new-machine");

    private static final Map<String, Figure> FIGURES = figuresById();

    private static Map<String, Figure> figuresById() {
        Map<String, Figure> byId = new HashMap<>();
        for (Figure figure : Figure.values()) {
            byId.put(figure.id(), figure);
        }
        return Map.copyOf(byId);
    }

    private static Optional<Figure> findFigure(CapabilityId of) {
        return Optional.ofNullable(FIGURES.get(of.value()));
    }

    /** What the capability measures. */
    Dimension dimension(CapabilityId of) {
        return catalogue.findCapability(of)
                .map(Capability::dimension)
                .orElseGet(() -> findFigure(of).map(Figure::dimension).orElse(Dimension.COUNT));
    }

    /** Whether the best single source counts rather than the sum. */
    boolean isMax(CapabilityId of) {
        return catalogue.findCapability(of)
                .map(capability -> capability.combine() == Capability.Combine.MAX)
                .orElse(false);
    }

    /** Whether the capability is a resource that its users share. */
    boolean isShared(CapabilityId of) {
        return catalogue.findCapability(of).map(capability -> capability.supply() > 0).orElse(false);
    }

    /** What a unit starts with before any feature is counted, in steps. */
    long start(Unit unit, CapabilityId of) {
        long amount = findFigure(of).map(figure -> figure(unit, figure)).orElse(0L);
        Optional<Capability> declared = catalogue.findCapability(of);
        if (declared.isPresent()) {
            amount += declared.get().supply();
            for (Figure figure : declared.get().own()) {
                amount += figure(unit, figure);
            }
        }
        return of.equals(NEW_MACHINE) && unit.condition() == Condition.NEW ? amount + 1 : amount;
    }

    private static long figure(Unit unit, Figure figure) {
        return unit.model().findFigure(figure).map(Amount::steps).orElse(0L);
    }

    /** What the effects come to for the demand, in steps: their sum, or the largest where the best source counts. */
    long raw(List<Effect> effects, Demand demand) {
        boolean max = isMax(demand.of());
        long raw = 0;
        for (Effect effect : effects) {
            if (effect.of().equals(demand.of()) && effect.countsIn(demand.in())) {
                long steps = effect.amount().steps();
                raw = max ? Math.max(raw, steps) : raw + steps;
            }
        }
        return raw;
    }
}
