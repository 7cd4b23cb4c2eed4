package fencerow.sizing.catalogue;

import fencerow.sizing.AngledBlade;
import fencerow.sizing.Bounds;
import fencerow.sizing.Caution;
import fencerow.sizing.ImplementPower;
import fencerow.sizing.Limit;
import fencerow.sizing.SnowBlower;
import fencerow.sizing.SnowCover;
import fencerow.sizing.SnowDensity;
import fencerow.sizing.Source;
import fencerow.sizing.Warning;
import fencerow.terms.Angle;
import fencerow.terms.Area;
import fencerow.terms.Density;
import fencerow.terms.Dimension;
import fencerow.terms.Length;
import fencerow.terms.MassRate;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Spread;
import fencerow.terms.Time;
import fencerow.terms.Volume;
import java.util.List;

/** Snow: how much lies there, and what a blade or a blower does with it. */
final class SnowCalculations {
    private static final Measured<Length> DRIVE_LENGTH = Measured.of(
                    new Bounds<>("drive-length", Length.ofFeet(10), Length.ofFeet(10_000)),
                    Length::of,
                    Length.ofFeet(10))
            .preset(Length.ofFeet(200))
            .usual(Length.ofFeet(20), Length.ofFeet(3000));
    private static final Measured<Length> DRIVE_WIDTH = Measured.of(AngledBlade.DRIVE, Length::of, Length.ofFeet(1))
            .preset(Length.ofFeet(12))
            .usual(Length.ofFeet(8), Length.ofFeet(60));
    private static final Measured<Length> DEPTH = Measured.of(SnowCover.DEPTH, Length::of, Length.ofInches(1))
            .preset(Length.ofInches(6))
            .usual(Length.ofInches(1), Length.ofFeet(3));
    private static final Choice<SnowDensity> SNOW =
            Choice.of("snow", SnowDensity.class, SnowDensity::id, SnowDensity.FRESH_AVERAGE);
    /** Where the snow is put, along both sides of the drive unless told otherwise. */
    private static final Measured<Length> RIDGE = Measured.of(SnowCover.RIDGE.as("ridge-length"), Length::of,
            Length.ofFeet(10));
    private static final Measured<Length> BLADE = Measured.of(AngledBlade.WIDTH, Length::of, Length.ofInches(6))
            .preset(Length.ofInches(72));
    private static final Measured<Angle> ANGLE =
            Measured.of(AngledBlade.ANGLE, Angle::of, Angle.ofDegrees(5)).preset(Angle.ofDegrees(30));
    private static final Measured<Length> OVERLAP = Measured.of(
                    new Bounds<>("overlap", new Length(0), Length.ofFeet(2)), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(6));
    private static final Measured<Length> TRACK = Measured.of(
                    new Bounds<>("tire-width", Length.ofFeet(2), Length.ofFeet(12)), Length::of, Length.ofInches(1))
            .preset(Length.ofInches(50));
    private static final Measured<Length> BLOWER = Measured.of(SnowBlower.WIDTH, Length::of, Length.ofInches(6))
            .preset(Length.ofInches(60));
    private static final Measured<Speed> SPEED = Measured.of(SnowBlower.SPEED, Speed::of, Speed.ofMph(0.25))
            .preset(Speed.ofMph(1))
            .usual(Speed.ofMph(0.3), Speed.ofMph(5));
    private static final Measured<Speed> THROW = Measured.of(
                    SnowBlower.THROW, Speed::of, Speed.ofMetersPerSecond(1))
            .preset(Speed.ofMetersPerSecond(15));
    private static final Measured<Ratio> EFFICIENCY = Measured.of(SnowBlower.EFFICIENCY, Ratio::of, Ratio.ofPercent(5))
            .preset(Ratio.ofPercent(30), Ratio.ofPercent(40));

    private static final Output VOLUME = new Output("volume", Dimension.VOLUME);
    private static final Output MASS = new Output("mass", Dimension.MASS);
    private static final Output WATER = new Output("water", Dimension.LENGTH);
    private static final Output RIDGE_HEIGHT = new Output("ridge-height", Dimension.LENGTH);
    private static final Output PATH = new Output("path", Dimension.LENGTH);
    private static final Output BESIDE = new Output("beside-wheels", Dimension.LENGTH);
    private static final Output PASSES = new Output("passes", Dimension.COUNT);
    private static final Output TIME = new Output("time", Dimension.TIME);
    private static final Output RATE = new Output("rate", Dimension.MASS_RATE);
    private static final Output THROW_POWER = new Output("throw-power", Dimension.POWER);
    private static final Output PTO_POWER = new Output("pto-power", Dimension.POWER);

    private SnowCalculations() {}

    static List<Calculation> all() {
        return List.of(
                named("snow-on-drive")
                        .asks(DRIVE_LENGTH, DRIVE_WIDTH, DEPTH, SNOW, RIDGE)
                        .gives(VOLUME, MASS, WATER, RIDGE_HEIGHT)
                        .from(Source.GEOMETRY)
                        .by(SnowCalculations::cover),
                named("snow-blade")
                        .asks(DRIVE_LENGTH, DRIVE_WIDTH, BLADE, ANGLE, OVERLAP, TRACK, SPEED)
                        .gives(PATH, BESIDE, PASSES, TIME)
                        .from(Source.GEOMETRY, Source.SNOW_PLOW_MANUAL)
                        .by(SnowCalculations::blade),
                named("snow-blower")
                        .asks(DRIVE_LENGTH, DRIVE_WIDTH, DEPTH, SNOW, BLOWER, OVERLAP, SPEED, THROW, EFFICIENCY)
                        .gives(RATE, THROW_POWER, PTO_POWER, PASSES, TIME)
                        .from(Source.GEOMETRY, Source.TRADE_PRACTICE)
                        .beware(Caution.BLOWER_CLEARING, Caution.PTO_GUARDS, Caution.THROWN_OBJECTS)
                        .by(SnowCalculations::blower));
    }

    private static Calculation.Builder named(String id) {
        return Calculation.named(id, Topic.SNOW).beware(Caution.HIDDEN_UNDER_SNOW, Caution.SLOPES);
    }

    private static void cover(Point in, Outcome out) {
        Length length = in.get(DRIVE_LENGTH);
        Area area = new Area(length.si() * in.get(DRIVE_WIDTH).si());
        SnowDensity snow = in.get(SNOW);
        Density fresh = snow.density();
        Density settled = fresh.si() < SnowDensity.SETTLED.density().si() ? SnowDensity.SETTLED.density() : fresh;
        Volume volume = SnowCover.volume(area, in.get(DEPTH));
        Length ridge = in.find(RIDGE).orElse(new Length(2 * length.si()));
        out.put(VOLUME, volume).put(MASS, SnowCover.mass(area, in.get(DEPTH), fresh));
        out.put(WATER, SnowCover.water(in.get(DEPTH), fresh));
        out.put(RIDGE_HEIGHT, SnowCover.ridgeHeight(volume, fresh, settled, ridge));
        out.used(RIDGE, Spread.exactly(ridge)).source(snow.source());
    }

    private static void blade(Point in, Outcome out) {
        Length path = AngledBlade.path(in.get(BLADE), in.get(ANGLE));
        Length beside = AngledBlade.besideWheels(path, in.get(TRACK));
        int passes = AngledBlade.passes(in.get(DRIVE_WIDTH), in.get(BLADE), in.get(ANGLE), in.get(OVERLAP));
        out.put(PATH, path).put(BESIDE, beside).count(PASSES, passes).put(TIME, time(in, passes));
        if (beside.si() < AngledBlade.BESIDE_WHEELS.si()) {
            out.limit(Limit.WHEEL_TRACK).warn(Warning.Kind.NARROWER_THAN_WHEELS, BESIDE.id());
        }
    }

    private static void blower(Point in, Outcome out) {
        SnowDensity snow = in.get(SNOW);
        Length width = in.get(BLOWER);
        MassRate rate = SnowBlower.rate(width, in.get(DEPTH), in.get(SPEED), snow.density());
        int passes = AngledBlade.passes(in.get(DRIVE_WIDTH), width, Angle.ofDegrees(0), in.get(OVERLAP));
        out.put(RATE, rate);
        out.put(THROW_POWER, SnowBlower.throwPower(rate, in.get(THROW), in.get(EFFICIENCY)));
        out.put(PTO_POWER, ImplementPower.SNOW_BLOWER.needed(width));
        out.count(PASSES, passes).put(TIME, time(in, passes)).source(snow.source());
    }

    /** Driving alone; turning and deep snow come on top. */
    private static Time time(Point in, int passes) {
        return new Time(passes * in.get(DRIVE_LENGTH).si() / in.get(SPEED).si());
    }
}
