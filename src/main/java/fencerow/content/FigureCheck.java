package fencerow.content;

import fencerow.terms.Amount;
import fencerow.terms.Figure;
import fencerow.wording.Quantities;
import java.util.EnumMap;
import java.util.Locale;
import java.util.Map;

/**
 * Looks whether a model's figures are plausible for a tractor of these classes and go together. Bands: common
 * practice, no source; wide enough for any real machine, narrow enough for a slipped digit or a wrong unit.
 */
final class FigureCheck {
    private static final Quantities UNITS = new Quantities(Locale.US, false);
    private static final double AXLES_AGREE = 0.02;

    private final Problems problems;
    private final Map<Figure, Band> bands = new EnumMap<>(Figure.class);

    private record Band(String words, double low, double high) {}

    FigureCheck(Problems problems) {
        this.problems = problems;
        band(Figure.ENGINE_POWER, "12 hp", "130 hp");
        band(Figure.PTO_POWER, "9 hp", "115 hp");
        band(Figure.TRACTOR_MASS, "900 lb", "12000 lb");
        band(Figure.FRONT_AXLE_MASS, "300 lb", "5500 lb");
        band(Figure.REAR_AXLE_MASS, "450 lb", "8000 lb");
        band(Figure.WHEELBASE, "48 in", "105 in");
        band(Figure.LENGTH, "80 in", "190 in");
        band(Figure.TIRE_WIDTH, "38 in", "100 in");
        band(Figure.HEIGHT, "60 in", "120 in");
        band(Figure.HEIGHT_FOLDED, "48 in", "120 in");
        band(Figure.LOADER_MASS, "200 lb", "2500 lb");
        band(Figure.LOADER_LIFT_PINS, "400 lb", "6000 lb");
        band(Figure.LOADER_LIFT, "300 lb", "5000 lb");
        band(Figure.LOADER_HEIGHT, "60 in", "160 in");
        band(Figure.HITCH_LIFT_ENDS, "500 lb", "8000 lb");
        band(Figure.HITCH_LIFT, "350 lb", "6500 lb");
        band(Figure.HYDRAULIC_FLOW, "2 gpm", "30 gpm");
        band(Figure.HYDRAULIC_PRESSURE, "1200 psi", "3500 psi");
        band(Figure.HITCH_OVERHANG, "14 in", "60 in");
        band(Figure.LOADER_REACH, "18 in", "90 in");
    }

    private void band(Figure figure, String low, String high) {
        bands.put(figure, new Band(
                low + " to " + high,
                UNITS.parse(low, figure.dimension()).si(),
                UNITS.parse(high, figure.dimension()).si()));
    }

    /** Warns of every figure out of its band and of figures that contradict one another. */
    void check(Place model, YamlMap written, Map<Figure, Amount> figures) {
        bands.forEach((figure, band) -> written.find(figure.id()).ifPresent(node -> {
            double value = si(figures, figure);
            if (value < band.low() || value > band.high()) {
                node.warning("[" + figure.id() + "] of [" + node.text() + "] is hardly possible",
                        "check it and its unit; " + band.words() + " would be usual");
            }
        }));
        notAbove(model, figures, Figure.PTO_POWER, Figure.ENGINE_POWER);
        notAbove(model, figures, Figure.LOADER_LIFT, Figure.LOADER_LIFT_PINS);
        notAbove(model, figures, Figure.HITCH_LIFT, Figure.HITCH_LIFT_ENDS);
        notAbove(model, figures, Figure.HEIGHT_FOLDED, Figure.HEIGHT);
        notAbove(model, figures, Figure.WHEELBASE, Figure.LENGTH);
        double axles = si(figures, Figure.FRONT_AXLE_MASS) + si(figures, Figure.REAR_AXLE_MASS);
        double total = si(figures, Figure.TRACTOR_MASS);
        if (total > 0 && axles > 0 && Math.abs(axles - total) > AXLES_AGREE * total) {
            problems.warning(model, String.format(Locale.ROOT,
                    "the two axles carry %.0f %% of the tractor's mass", 100 * axles / total),
                    "make front-axle-mass and rear-axle-mass sum to tractor-mass");
        }
    }

    private void notAbove(Place model, Map<Figure, Amount> figures, Figure low, Figure high) {
        if (figures.containsKey(low) && figures.containsKey(high) && si(figures, low) > si(figures, high)) {
            problems.warning(model, "[" + low.id() + "] is above [" + high.id() + "]", "check both");
        }
    }

    private static double si(Map<Figure, Amount> figures, Figure figure) {
        Amount amount = figures.get(figure);
        return amount == null ? 0 : amount.si();
    }
}
