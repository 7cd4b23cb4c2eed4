package fencerow.sizing.catalogue;

import static fencerow.sizing.catalogue.TractorParameters.BEHIND;
import static fencerow.sizing.catalogue.TractorParameters.FRONT_AXLE;
import static fencerow.sizing.catalogue.TractorParameters.REAR_AXLE;
import static fencerow.sizing.catalogue.TractorParameters.WHEELBASE;

import fencerow.sizing.Axles;
import fencerow.sizing.Carried;
import fencerow.sizing.Caution;
import fencerow.sizing.UsualLoad;
import fencerow.sizing.FrontLoadLimit;
import fencerow.sizing.LiftAtDistance;
import fencerow.sizing.LoaderPayload;
import fencerow.sizing.RearBallast;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Spread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** What a loader lifts, and what stops it. */
final class LoaderCalculations {
    private static final Measured<Mass> PINS = Measured.of(
                    LiftAtDistance.LIFT.as("lift-at-pins"), Mass::of, Mass.ofPounds(50))
            .preset(Mass.ofPounds(2000))
            .usual(Mass.ofPounds(400), Mass.ofPounds(5000));
    /** Left out, the arms' usual reach is taken. */
    private static final Measured<Mass> RATED = Measured.of(
                    LiftAtDistance.LIFT.as("lift-at-rated-distance"), Mass::of, Mass.ofPounds(50))
            .usual(Mass.ofPounds(300), Mass.ofPounds(4500));
    private static final Measured<Length> RATED_DISTANCE = Measured.of(
                    LiftAtDistance.RATED_DISTANCE, Length::of, Length.ofMillimeters(50))
            .preset(Length.ofMillimeters(500))
            .usual(Length.ofMillimeters(400), Length.ofMillimeters(800));
    /** Arm pivot to pins where no second rating is known. */
    private static final Measured<Length> REACH = Measured.of(LiftAtDistance.REACH, Length::of, Length.ofInches(1))
            .preset(Length.ofInches(55), Length.ofInches(80));
    private static final Measured<Length> CENTER =
            TractorParameters.distance("load-center", 24, 0, 48);
    private static final Measured<Mass> COUPLER = TractorParameters.load("coupler-mass", 0);
    /** Coupler's center, and how far it sets the load forward. */
    private static final Measured<Length> COUPLER_OFFSET =
            TractorParameters.distance("coupler-offset", 0, 0, 8);
    private static final Measured<Mass> TOOL = TractorParameters.load("tool-mass", 250);
    private static final Measured<Length> TOOL_CENTER = TractorParameters.distance("tool-center", 10, 0, 36);
    private static final Measured<Mass> LOAD = TractorParameters.load("load", 800);
    private static final Measured<Length> PINS_AHEAD = Measured.of(
                    FrontLoadLimit.AHEAD.as("pins-ahead-of-front-axle"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(35))
            .usual(Length.ofInches(15), Length.ofInches(80));
    private static final Measured<Mass> LOADER = TractorParameters.load("loader-mass", 900);
    /** The loader's own center; behind the front axle where negative. */
    private static final Measured<Length> LOADER_AHEAD = Measured.of(
                    Axles.DISTANCE.as("loader-ahead-of-front-axle"), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(6))
            .usual(Length.ofInches(-36), Length.ofInches(40));
    private static final Measured<Mass> HITCH_BALLAST = TractorParameters.load("hitch-ballast", 0);
    private static final Measured<Mass> WHEEL_BALLAST = TractorParameters.load("wheel-ballast", 0);

    private static final Output LIFT = new Output("lift-at-center", Dimension.MASS);
    private static final Output FARTHEST = new Output("farthest-center", Dimension.LENGTH);
    private static final Output HYDRAULIC = new Output("hydraulic", Dimension.MASS);
    private static final Output HALF_TIPPING = new Output("half-tipping", Dimension.MASS);
    private static final Output REAR_SHARE = new Output("keeping-rear-share", Dimension.MASS);
    private static final Output USABLE = new Output("usable", Dimension.MASS);
    private static final Output FURTHER_BALLAST = new Output("further-ballast", Dimension.MASS);

    private LoaderCalculations() {}

    static List<Calculation> all() {
        List<Calculation> all = new ArrayList<>();
        all.add(named("loader-lift")
                .asks(PINS, RATED, RATED_DISTANCE, REACH, CENTER, COUPLER, COUPLER_OFFSET, TOOL, TOOL_CENTER, LOAD)
                .gives(LIFT, HYDRAULIC, FARTHEST)
                .by(LoaderCalculations::lift));
        all.add(named("loader-payload")
                .asks(PINS, RATED, RATED_DISTANCE, REACH, CENTER, COUPLER, COUPLER_OFFSET, TOOL, TOOL_CENTER)
                .asks(FRONT_AXLE, REAR_AXLE, WHEELBASE, PINS_AHEAD, LOADER, LOADER_AHEAD, HITCH_BALLAST, BEHIND)
                .asks(WHEEL_BALLAST)
                .gives(HYDRAULIC, HALF_TIPPING, REAR_SHARE, USABLE, FURTHER_BALLAST)
                .gives(Arrays.stream(UsualLoad.values()).map(LoaderCalculations::margin).toArray(Output[]::new))
                .from(Source.EARTH_MOVING_HANDBOOK, Source.IMPLEMENT_MANUALS)
                .by(LoaderCalculations::payload));
        all.addAll(MaterialCalculations.all());
        return all;
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.LOADER)
                .from(Source.LEVER_STATICS, Source.LIFT_RATING_PRACTICE)
                .beware(Caution.NOT_AN_APPROVAL, Caution.BALLAST_BEFORE_LIFTING, Caution.CARRY_LOW)
                .beware(Caution.NOBODY_UNDER_LOAD, Caution.CHECK_COUPLER_LOCKS, Caution.SLOPES);
    }

    private static Output margin(UsualLoad load) {
        return new Output("margin-" + load.id(), Dimension.MASS);
    }

    private static void lift(Point in, Outcome out) {
        LiftAtDistance lift = rating(in, out);
        Length center = center(in, in.get(CENTER));
        out.put(LIFT, lift.at(center));
        out.put(HYDRAULIC, lift.payload(center, carried(in)));
        double reach = lift.reachFor(in.get(LOAD), carried(in)).map(Length::si).orElse(0.0);
        out.put(FARTHEST, new Length(Math.max(0, reach - in.get(COUPLER_OFFSET).si())));
        out.warnIf(reach == 0, Warning.Kind.OVER_RATING, LOAD.id());
        out.warnIf(lift.isExtrapolated(center), Warning.Kind.EXTRAPOLATED_LIFT, CENTER.id());
    }

    private static void payload(Point in, Outcome out) {
        LiftAtDistance lift = rating(in, out);
        Length center = center(in, in.get(CENTER));
        LoaderPayload payload = at(in, lift, center);
        out.put(HYDRAULIC, payload.hydraulic());
        out.put(HALF_TIPPING, payload.halfTipping());
        out.put(REAR_SHARE, payload.rearShare());
        out.put(USABLE, payload.usable());
        out.limit(payload.limit());
        out.put(FURTHER_BALLAST, RearBallast.toLift(carrying(in), TractorParameters.axles(in).total(),
                payload.hydraulic(), new Length(in.get(PINS_AHEAD).si() + center.si()), in.get(BEHIND)));
        out.warnIf(payload.usable().si() == 0 && payload.hydraulic().si() > 0,
                Warning.Kind.NO_WEIGHT_BEHIND, HITCH_BALLAST.id());
        out.warnIf(lift.isExtrapolated(center), Warning.Kind.EXTRAPOLATED_LIFT, CENTER.id());
        for (UsualLoad load : UsualLoad.values()) {
            Length itsCenter = center(in, load.center());
            if (itsCenter.si() <= lift.farthest().si()) {
                double usable = at(in, lift, itsCenter).usable().si();
                out.put(margin(load), Spread.of(
                        new Mass(usable - load.mass().high().si()), new Mass(usable - load.mass().low().si())));
                out.source(load.source());
            }
        }
        out.caution(Caution.BALE_ROLLS_BACK);
    }

    private static LoaderPayload at(Point in, LiftAtDistance lift, Length center) {
        return LoaderPayload.of(lift, equipped(in), TractorParameters.axles(in).total(), in.get(PINS_AHEAD), center,
                carried(in));
    }

    private static Axles equipped(Point in) {
        return TractorParameters.axles(in)
                .withAhead(in.get(LOADER), in.get(LOADER_AHEAD))
                .withBehind(in.get(HITCH_BALLAST), in.get(BEHIND))
                .withBehind(in.get(WHEEL_BALLAST), new Length(0));
    }

    private static Axles carrying(Point in) {
        Axles axles = equipped(in);
        for (Carried each : carried(in)) {
            axles = axles.withAhead(each.mass(), new Length(in.get(PINS_AHEAD).si() + each.center().si()));
        }
        return axles;
    }

    private static LiftAtDistance rating(Point in, Outcome out) {
        if (in.find(RATED).isPresent()) {
            return LiftAtDistance.fromRatings(in.get(PINS), in.get(RATED), in.get(RATED_DISTANCE));
        }
        out.warn(Warning.Kind.ASSUMED_LIFT, RATED.id()).source(Source.TRADE_PRACTICE);
        return LiftAtDistance.fromReach(in.get(PINS), in.get(REACH));
    }

    private static Length center(Point in, Length beyondCoupler) {
        return new Length(in.get(COUPLER_OFFSET).si() + beyondCoupler.si());
    }

    private static Carried[] carried(Point in) {
        Length offset = in.get(COUPLER_OFFSET);
        return new Carried[] {
            new Carried(in.get(COUPLER), offset),
            new Carried(in.get(TOOL), center(in, in.get(TOOL_CENTER)))
        };
    }
}
