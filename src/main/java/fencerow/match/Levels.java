package fencerow.match;

import fencerow.sizing.Axles;
import fencerow.sizing.FieldMachine;
import fencerow.sizing.FrontBallast;
import fencerow.sizing.FrontLoadLimit;
import fencerow.sizing.LiftAtDistance;
import fencerow.sizing.OutOfRangeException;
import fencerow.sizing.RearBallast;
import fencerow.sizing.UsualLoad;
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
public final class Levels {
    /** Ahead of the bucket pins, where a load's center is taken to lie: half the depth of a pallet. */
    private static final Length CENTER_AHEAD_OF_PINS = UsualLoad.SOD_PALLET.center();
    /** Ahead of the bucket pins, where loader lift is rated. */
    private static final Length RATED_AHEAD_OF_PINS = Length.ofMillimeters(500);
    /** Behind the link ends: where a ballast box's or a tool's center usually lies, as hitch lift is rated. */
    private static final Length CENTER_BEHIND_ENDS = Length.ofMillimeters(610);
    /** Ahead of the front axle, where front weights hang; common practice, no source. */
    private static final Length WEIGHTS_AHEAD_OF_AXLE = Length.ofInches(20);

    private Levels() {}

    /** The threshold as an amount on this model. */
    public static Amount on(Model model, Threshold threshold) {
        if (threshold instanceof Threshold.Counterweight counterweight) {
            return new Amount(Dimension.MASS, counterweight(model, new Mass(counterweight.load().si())));
        }
        if (threshold instanceof Threshold.Payload payload) {
            return payload(model, new Mass(payload.load().si())).amount();
        }
        if (threshold instanceof Threshold.SteeringWeight steering) {
            return new Amount(Dimension.MASS, steeringWeight(model, new Mass(steering.tool().si())));
        }
        return findOnAny(threshold).orElseThrow();
    }

    /** The threshold as an amount, where that is the same on all models. */
    static Optional<Amount> findOnAny(Threshold threshold) {
        if (threshold instanceof Threshold.Fixed fixed) {
            return Optional.of(fixed.amount());
        }
        if (!(threshold instanceof Threshold.MowingWidth mowing)) {
            return Optional.empty();
        }
        return Optional.of(FieldMachine.LAWN_MOWER
                .typicalWidth(new Area(mowing.area().si()), new Time(mowing.time().si()))
                .amount());
    }

    /**
     * Kilograms behind that a load in front asks for, by the stricter of two rules: the rear axle keeps its share, and
     * the load is at most half of what tips the machine. The loader's own mass is taken to hang over the front axle,
     * where its moment about that axle is nothing. A model whose sheet lacks a figure asks for none: there is nothing
     * to go by.
     */
    private static double counterweight(Model model, Mass load) {
        Optional<Double> needed = bare(model).flatMap(axles -> figure(model, Figure.LOADER_REACH)
                .flatMap(reach -> behind(model).map(behind -> {
                    Length ahead = new Length(reach + CENTER_AHEAD_OF_PINS.si());
                    double share =
                            RearBallast.needed(axles.withAhead(load, ahead), axles.total(), behind).si();
                    return Math.max(share, againstTipping(axles, load, ahead, behind));
                })));
        return needed.orElse(0.0);
    }

    /** Kilograms behind with which half the tipping load is no less than the load. */
    private static double againstTipping(Axles bare, Mass load, Length ahead, Length behind) {
        double tipping = load.si() / FrontLoadLimit.OF_TIPPING.si();
        double missing = tipping - FrontLoadLimit.tipping(bare, ahead).si();
        return Math.max(0, missing * ahead.si() / (bare.wheelbase().si() + behind.si()));
    }

    /** The rating that lifts the load at its center; the load itself where the sheet lacks a rating or cannot be. */
    private static Mass payload(Model model, Mass load) {
        try {
            return figure(model, Figure.LOADER_LIFT_PINS)
                    .flatMap(pins -> figure(model, Figure.LOADER_LIFT).map(ahead -> LiftAtDistance.fromRatings(
                            new Mass(pins), new Mass(ahead), RATED_AHEAD_OF_PINS)))
                    .map(lift -> lift.ratingFor(load, CENTER_AHEAD_OF_PINS))
                    .orElse(load);
        } catch (OutOfRangeException e) {
            return load;
        }
    }

    /**
     * Kilograms ahead of the front axle with which a fifth of the bare machine's mass stays on it, the tool raised. The
     * loader is left aside: where it is on, it gives its own weight. None for a model whose sheet lacks a figure.
     */
    private static double steeringWeight(Model model, Mass tool) {
        return bare(model)
                .flatMap(axles -> behind(model).map(behind -> FrontBallast.needed(
                                axles.withBehind(tool, behind), axles.total(), WEIGHTS_AHEAD_OF_AXLE)
                        .si()))
                .orElse(0.0);
    }

    private static Optional<Axles> bare(Model model) {
        return figure(model, Figure.WHEELBASE).flatMap(wheelbase -> figure(model, Figure.FRONT_AXLE_MASS)
                .flatMap(front -> figure(model, Figure.REAR_AXLE_MASS)
                        .map(rear -> new Axles(new Mass(front), new Mass(rear), new Length(wheelbase)))));
    }

    /** Behind the rear axle, where what hangs on the hitch has its center. */
    private static Optional<Length> behind(Model model) {
        return figure(model, Figure.HITCH_OVERHANG)
                .map(overhang -> new Length(overhang + CENTER_BEHIND_ENDS.si()));
    }

    private static Optional<Double> figure(Model model, Figure figure) {
        return model.findFigure(figure).map(Amount::si);
    }
}
