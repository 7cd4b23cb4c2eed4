package fencerow.match;

import fencerow.sizing.Axles;
import fencerow.sizing.FieldMachine;
import fencerow.sizing.RearBallast;
import fencerow.stock.Model;
import fencerow.terms.Amount;
import fencerow.terms.Area;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Threshold;
import fencerow.terms.Time;
import java.util.Optional;

/** Works out what a demand asks of one model. */
final class Levels {
    /** Ahead of the bucket pins: where loader lift is rated and a load's center usually lies. */
    private static final Length LOAD_AHEAD_OF_PINS = Length.ofMillimeters(500);
    /** Behind the link ends: where a ballast box's center usually lies, as hitch lift is rated. */
    private static final Length BALLAST_BEHIND_ENDS = Length.ofMillimeters(610);

    private Levels() {}

    /** The threshold as an amount on this model. */
    static Amount on(Model model, Threshold threshold) {
        if (threshold instanceof Threshold.Counterweight counterweight) {
            return new Amount(Dimension.MASS, counterweight(model, new Mass(counterweight.load().si())));
        }
        return findOnAny(threshold).orElseThrow();
    }

    /** The threshold as an amount, where that is the same on all models. */
    static Optional<Amount> findOnAny(Threshold threshold) {
        if (threshold instanceof Threshold.Fixed fixed) {
            return Optional.of(fixed.amount());
        }
        if (threshold instanceof Threshold.Counterweight) {
            return Optional.empty();
        }
        var mowing = (Threshold.MowingWidth) threshold;
        return Optional.of(FieldMachine.LAWN_MOWER
                .typicalWidth(new Area(mowing.area().si()), new Time(mowing.time().si()))
                .amount());
    }

    /**
     * Kilograms behind that a load in front asks for. The loader's own mass is taken to hang over the front axle, where
     * its moment about that axle is nothing. A model whose sheet lacks a figure asks for none: there is nothing to go
     * by.
     */
    private static double counterweight(Model model, Mass load) {
        Optional<Double> needed = figure(model, Figure.WHEELBASE)
                .flatMap(wheelbase -> figure(model, Figure.FRONT_AXLE_MASS)
                        .flatMap(front -> figure(model, Figure.REAR_AXLE_MASS)
                                .map(rear -> new Axles(new Mass(front), new Mass(rear), new Length(wheelbase)))))
                .flatMap(axles -> figure(model, Figure.LOADER_REACH)
                        .flatMap(reach -> figure(model, Figure.HITCH_OVERHANG).map(overhang -> {
                            Axles loaded = axles.withAhead(load, new Length(reach + LOAD_AHEAD_OF_PINS.si()));
                            Length behind = new Length(overhang + BALLAST_BEHIND_ENDS.si());
                            return RearBallast.needed(loaded, axles.total(), behind).si();
                        })));
        return needed.orElse(0.0);
    }

    private static Optional<Double> figure(Model model, Figure figure) {
        return model.findFigure(figure).map(Amount::si);
    }
}
