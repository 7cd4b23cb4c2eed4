package fencerow.sizing.catalogue;

import fencerow.sizing.Axles;
import fencerow.sizing.Bounds;
import fencerow.terms.Length;
import fencerow.terms.Mass;

/** The tractor's own figures, asked for by several calculations; presets are those of an invented compact tractor. */
final class TractorParameters {
    static final Measured<Mass> FRONT_AXLE = axle("front-axle", 1300);
    static final Measured<Mass> REAR_AXLE = axle("rear-axle", 1750);
    static final Measured<Length> WHEELBASE = Measured.of(Axles.WHEELBASE, Length::of, Length.ofInches(1))
            .preset(Length.ofInches(67))
            .usual(Length.ofInches(50), Length.ofInches(95));
    /** Rear axle to the center of what hangs on the hitch. */
    static final Measured<Length> BEHIND = distance("behind-rear-axle", 55, 20, 130);
    /** Front axle to the center of a load in front. */
    static final Measured<Length> AHEAD = distance("ahead-of-front-axle", 50, 4, 120);
    static final Measured<Mass> FRONT_LOAD = load("front-load", 0);
    static final Measured<Mass> REAR_LOAD = load("rear-load", 0);

    private TractorParameters() {}

    /** Bare axle loads. */
    static Axles axles(Point in) {
        return new Axles(in.get(FRONT_AXLE), in.get(REAR_AXLE), in.get(WHEELBASE));
    }

    static Measured<Length> distance(String id, double preset, double usualLow, double usualHigh) {
        Bounds<Length> bounds = new Bounds<>(id, new Length(0), Axles.DISTANCE.max());
        return Measured.of(bounds, Length::of, Length.ofInches(1))
                .preset(Length.ofInches(preset))
                .usual(Length.ofInches(usualLow), Length.ofInches(usualHigh));
    }

    static Measured<Mass> load(String id, double preset) {
        return Measured.of(Axles.LOAD.as(id), Mass::of, Mass.ofPounds(50))
                .preset(Mass.ofPounds(preset))
                .usual(Mass.ofPounds(0), Mass.ofPounds(4000));
    }

    private static Measured<Mass> axle(String id, double preset) {
        Bounds<Mass> bounds = new Bounds<>(id, Mass.ofPounds(200), Mass.ofPounds(12_000));
        return Measured.of(bounds, Mass::of, Mass.ofPounds(50))
                .preset(Mass.ofPounds(preset))
                .usual(Mass.ofPounds(400), Mass.ofPounds(5000));
    }
}
