package fencerow.sizing.catalogue;

import static fencerow.sizing.catalogue.TractorParameters.FRONT_AXLE;
import static fencerow.sizing.catalogue.TractorParameters.REAR_AXLE;
import static fencerow.sizing.catalogue.TractorParameters.WHEELBASE;

import fencerow.sizing.Axles;
import fencerow.sizing.Caution;
import fencerow.sizing.FrontBallast;
import fencerow.sizing.HitchCategory;
import fencerow.sizing.LiftAtDistance;
import fencerow.sizing.Limit;
import fencerow.sizing.PtoPower;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;
import java.util.List;

/** The three-point hitch: its category and what it lifts. */
final class HitchCalculations {
    /** Lift at the rated distance as a share of that at the ends, where only the latter is known. */
    private static final Spread<Ratio> USUAL_SHARE = Spread.of(Ratio.ofPercent(65), Ratio.ofPercent(85));

    private static final Measured<Power> POWER = Measured.of(
                    PtoPower.POWER.as("engine-power"), Power::of, Power.ofHorsepower(1))
            .preset(Power.ofHorsepower(25))
            .usual(Power.ofHorsepower(15), Power.ofHorsepower(100));
    private static final Choice<HitchCategory> CATEGORY =
            Choice.of("category", HitchCategory.class, HitchCategory::id, HitchCategory.CATEGORY_1);
    private static final Measured<Mass> ENDS = Measured.of(
                    LiftAtDistance.LIFT.as("lift-at-ends"), Mass::of, Mass.ofPounds(50))
            .preset(Mass.ofPounds(1800))
            .usual(Mass.ofPounds(400), Mass.ofPounds(6000));
    /** Left out, a usual share of the lift at the ends is taken. */
    private static final Measured<Mass> BEHIND_ENDS = Measured.of(
                    LiftAtDistance.LIFT.as("lift-behind-ends"), Mass::of, Mass.ofPounds(50))
            .usual(Mass.ofPounds(300), Mass.ofPounds(5000));
    private static final Measured<Length> RATED = Measured.of(
                    LiftAtDistance.RATED_DISTANCE, Length::of, Length.ofInches(1))
            .preset(Length.ofInches(24))
            .usual(Length.ofInches(20), Length.ofInches(30));
    private static final Measured<Mass> TOOL = TractorParameters.load("tool-mass", 700);
    private static final Measured<Length> CENTER = TractorParameters.distance("tool-center", 24, 6, 48);
    private static final Measured<Length> OVERHANG = TractorParameters.distance("hitch-overhang", 32, 15, 48);

    private static final Output TOP_PIN = new Output("top-pin", Dimension.LENGTH);
    private static final Output LOWER_PIN = new Output("lower-pin", Dimension.LENGTH);
    private static final Output SPREAD = new Output("lower-spread", Dimension.LENGTH);
    private static final Output MAST = new Output("mast", Dimension.LENGTH);
    private static final Output LIFT = new Output("lift", Dimension.MASS);
    private static final Output MARGIN = new Output("margin", Dimension.MASS);
    private static final Output FRONT = new Output("front-axle-load", Dimension.MASS);
    private static final Output SHARE = new Output("front-share-of-unladen", Dimension.RATIO);

    private HitchCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("hitch-category")
                        .asks(POWER)
                        .from(Source.HITCH_CATEGORIES)
                        .by(HitchCalculations::category),
                named("hitch-pins")
                        .asks(CATEGORY)
                        .gives(TOP_PIN, LOWER_PIN, SPREAD, MAST)
                        .from(Source.HITCH_CATEGORIES, Source.HITCH_STANDARD)
                        .by(HitchCalculations::pins),
                named("hitch-lift")
                        .asks(ENDS, BEHIND_ENDS, RATED, TOOL, CENTER, FRONT_AXLE, REAR_AXLE, WHEELBASE, OVERHANG)
                        .gives(LIFT, MARGIN, FRONT, SHARE)
                        .from(Source.LEVER_STATICS, Source.HITCH_LIFT_TEST, Source.IMPLEMENT_MANUALS)
                        .beware(Caution.STEERING_WEIGHT, Caution.NOT_AN_APPROVAL)
                        .by(HitchCalculations::lift));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.HITCH).beware(Caution.STAND_CLEAR_OF_HITCH);
    }

    private static void category(Point in, Outcome out) {
        HitchCategory.forPower(in.get(POWER)).forEach(category -> out.find("category", category.id()));
        out.limit(Limit.HITCH_POWER_BAND);
    }

    private static void pins(Point in, Outcome out) {
        HitchCategory category = in.get(CATEGORY);
        out.put(TOP_PIN, category.topPin()).put(LOWER_PIN, category.lowerPin());
        out.put(SPREAD, category.lowerSpread()).put(MAST, category.mast());
    }

    private static void lift(Point in, Outcome out) {
        Mass ends = in.get(ENDS);
        Length center = in.get(CENTER);
        Spread<Mass> behind = in.find(BEHIND_ENDS)
                .map(Spread::exactly)
                .orElseGet(() -> Spread.of(share(ends, USUAL_SHARE.low()), share(ends, USUAL_SHARE.high())));
        LiftAtDistance low = LiftAtDistance.fromRatings(ends, behind.low(), in.get(RATED));
        LiftAtDistance high = LiftAtDistance.fromRatings(ends, behind.high(), in.get(RATED));
        Spread<Mass> lift = Spread.of(low.at(center), high.at(center));
        double tool = in.get(TOOL).si();
        out.put(LIFT, lift);
        out.put(MARGIN, Spread.of(new Mass(lift.low().si() - tool), new Mass(lift.high().si() - tool)));
        boolean lifts = lift.low().si() >= tool;
        if (in.find(BEHIND_ENDS).isEmpty()) {
            out.warn(Warning.Kind.ASSUMED_LIFT, BEHIND_ENDS.id()).source(Source.TRADE_PRACTICE);
        }
        out.warnIf(low.isExtrapolated(center), Warning.Kind.EXTRAPOLATED_LIFT, CENTER.id());
        out.warnIf(!lifts, Warning.Kind.OVER_RATING, TOOL.id());
        steering(in, out, lifts);
    }

    private static void steering(Point in, Outcome out, boolean lifts) {
        Axles bare = TractorParameters.axles(in);
        Length behind = new Length(in.get(OVERHANG).si() + in.get(CENTER).si());
        Axles raised = bare.withBehind(in.get(TOOL), behind);
        Ratio share = new Ratio(raised.front().si() / bare.total().si());
        boolean light = share.si() < FrontBallast.FRONT_SHARE.si();
        out.put(FRONT, raised.front()).put(SHARE, share);
        out.warnIf(light, Warning.Kind.LIGHT_STEERING, FRONT.id());
        out.limit(light && lifts ? Limit.STEERING_SHARE : Limit.HYDRAULICS);
    }

    private static Mass share(Mass whole, Ratio part) {
        return new Mass(whole.si() * part.si());
    }
}
