package fencerow.stock;

import fencerow.terms.Amount;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Figure;
import fencerow.terms.MachineClass;
import fencerow.terms.ModelId;
import fencerow.terms.Offering;
import java.util.Map;
import java.util.Optional;

/**
 * A tractor model.
 *
 * @param maker    the maker's name
 * @param name     the model's name
 * @param trim     economy, standard or deluxe
 * @param figures  the data sheet
 * @param standard what every one of it comes with
 * @param offering where it differs from its class
 * @param limits   the most of a feature that can ever be there
 */
public record Model(
        ModelId id,
        String maker,
        String name,
        MachineClass machineClass,
        String trim,
        Map<Figure, Amount> figures,
        Map<FeatureId, Fact> standard,
        Map<FeatureId, Offering> offering,
        Map<FeatureId, Integer> limits) {
    /** Copies the maps. */
    public Model {
        figures = Map.copyOf(figures);
        standard = Map.copyOf(standard);
        offering = Map.copyOf(offering);
        limits = Map.copyOf(limits);
    }

    /** How the feature is offered on this model: its own word, else what comes with it, else its class's. */
    public Offering offeringOf(Feature feature) {
        Offering own = offering.get(feature.id());
        if (own != null) {
            return own;
        }
        if (standard.get(feature.id()) instanceof Fact.Fitted) {
            return Offering.INCLUDED;
        }
        return feature.offeringOn(machineClass);
    }

    /** The figure, where the data sheet gives it. */
    public Optional<Amount> findFigure(Figure figure) {
        return Optional.ofNullable(figures.get(figure));
    }

    /** Maker and name, as on the hood. */
    public String title() {
        return maker + " " + name;
    }
}
