package fencerow.stock;

import fencerow.terms.Amount;
import fencerow.terms.Figure;
import fencerow.terms.MachineClass;
import fencerow.terms.ModelId;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A stand-in for a model nobody named: of its class only the size is known, so it has the usual figures of that size.
 */
public final class UsualModel {
    private static final String PREFIX = "usual-";

    private UsualModel() {}

    /**
     * The stand-in for a class: for each figure the lower median of the catalogue's models of the class, so that it is
     * one that a machine of that size really has; nothing on it but what its class always has. Empty where the
     * catalogue has no model of the class.
     */
    public static Optional<Model> of(MachineClass machineClass, Catalogue catalogue) {
        List<Model> models = catalogue.models().stream()
                .filter(model -> model.machineClass() == machineClass)
                .toList();
        if (models.isEmpty()) {
            return Optional.empty();
        }
        Map<Figure, Amount> figures = new EnumMap<>(Figure.class);
        for (Figure figure : Figure.values()) {
            List<Double> known = models.stream()
                    .flatMap(model -> model.findFigure(figure).stream())
                    .map(Amount::si)
                    .sorted()
                    .toList();
            if (!known.isEmpty()) {
                figures.put(figure, new Amount(figure.dimension(), known.get((known.size() - 1) / 2)));
            }
        }
        return Optional.of(new Model(new ModelId(PREFIX + machineClass.id()), "", "", machineClass, "standard",
                figures, Map.of(), Map.of(), Map.of()));
    }

    /** Whether the model is such a stand-in. */
    public static boolean is(Model model) {
        return model.id().value().startsWith(PREFIX) && model.name().isEmpty();
    }
}
