package fencerow.match;

import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import fencerow.terms.Threshold;

/** Works out what a demand asks of one model. */
final class Levels {
    private Levels() {}

    /** The threshold as an amount on this model. */
    static Amount on(Model model, Threshold threshold) {
        if (threshold instanceof Threshold.Fixed fixed) {
            return fixed.amount();
        }
        if (threshold instanceof Threshold.Counterweight counterweight) {
            return counterweight(model, counterweight.load());
        }
        var mowing = (Threshold.MowingWidth) threshold;
        return mowingWidth(mowing.area(), mowing.time());
    }

    private static Amount counterweight(Model model, Amount load) {
        double a = figure(model, Figure.LOADER_REACH) + 0.5;
        double b = figure(model, Figure.WHEELBASE);
        double overhang = figure(model, Figure.HITCH_OVERHANG) + 0.6;
        double rear = figure(model, Figure.REAR_AXLE_MASS);
        double total = figure(model, Figure.TRACTOR_MASS);
        double mass = (load.si() * a - rear * b + 0.45 * total * b) / (b + overhang);
        return new Amount(Dimension.MASS, Math.max(0, mass));
    }

    private static Amount mowingWidth(Amount area, Amount time) {
        double metresPerSecond = 1.8;
        double efficiency = 0.75;
        return new Amount(Dimension.LENGTH, area.si() / (time.si() * metresPerSecond * efficiency));
    }

    private static double figure(Model model, Figure figure) {
        return model.findFigure(figure).map(Amount::si).orElse(0.0);
    }
}
