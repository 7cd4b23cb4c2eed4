package fencerow.sizing.catalogue;

import fencerow.sizing.Axles;
import fencerow.sizing.BallastSupply;
import fencerow.sizing.Bounds;
import fencerow.sizing.BucketVolume;
import fencerow.sizing.Caution;
import fencerow.sizing.Source;
import fencerow.sizing.WeightSplit;
import fencerow.terms.Density;
import fencerow.terms.Dimension;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;
import fencerow.terms.Volume;
import java.util.List;

/** What stands on the axles before anything is lifted: the usual split, and what a filled ballast box weighs. */
final class UnladenCalculations {
    private static final Measured<Mass> TRACTOR = Measured.of(Axles.TRACTOR_MASS, Mass::of, Mass.ofPounds(50))
            .preset(Mass.ofPounds(3000))
            .usual(Mass.ofPounds(1200), Mass.ofPounds(9000));
    private static final Choice<WeightSplit> DRIVE =
            Choice.of("drive", WeightSplit.class, WeightSplit::id, WeightSplit.FOUR_WHEEL_DRIVE);
    private static final Measured<Mass> EMPTY = Measured.of(
                    new Bounds<>("empty-box", new Mass(0), Mass.ofPounds(1500)), Mass::of, Mass.ofPounds(10))
            .preset(Mass.ofPounds(120));
    private static final Measured<Volume> INSIDE = Measured.of(
                    BucketVolume.VOLUME.as("inside"), Volume::of, Volume.ofCubicFeet(0.5))
            .preset(Volume.ofCubicFeet(6))
            .usual(Volume.ofCubicFeet(2), Volume.ofCubicFeet(15));
    private static final Choice<Spread<Density>> FILL = Choice.of(
            "fill",
            List.of(BallastSupply.SAND_FILL, BallastSupply.CONCRETE_FILL),
            fill -> fill.equals(BallastSupply.SAND_FILL) ? "dry-sand" : "concrete",
            BallastSupply.SAND_FILL);

    private static final Output FRONT = new Output("front-axle-load", Dimension.MASS);
    private static final Output REAR = new Output("rear-axle-load", Dimension.MASS);
    private static final Output BOX = new Output("filled-box", Dimension.MASS);

    private UnladenCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("weight-split")
                        .asks(TRACTOR, DRIVE)
                        .gives(FRONT, REAR)
                        .from(Source.SMALL_TRACTOR_MANUAL, Source.WEIGHT_SPLIT_BULLETIN)
                        .by(UnladenCalculations::split),
                named("ballast-box")
                        .asks(EMPTY, INSIDE, FILL)
                        .gives(BOX)
                        .from(Source.TRADE_PRACTICE)
                        .by(UnladenCalculations::box));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.BALANCE).beware(Caution.NOT_AN_APPROVAL, Caution.AXLE_AND_TIRE_RATINGS);
    }

    private static void split(Point in, Outcome out) {
        double tractor = in.get(TRACTOR).si();
        Spread<Ratio> front = in.get(DRIVE).frontShare();
        double low = tractor * front.low().si();
        double high = tractor * front.high().si();
        out.put(FRONT, Spread.of(new Mass(low), new Mass(high)));
        out.put(REAR, Spread.of(new Mass(tractor - high), new Mass(tractor - low)));
    }

    private static void box(Point in, Outcome out) {
        Spread<Density> fill = in.get(FILL);
        out.put(BOX, Spread.of(
                BallastSupply.box(in.get(EMPTY), in.get(INSIDE), fill.low()),
                BallastSupply.box(in.get(EMPTY), in.get(INSIDE), fill.high())));
    }
}
