package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;

/**
 * Loads at which a tractor becomes unsteady forward, whatever its hydraulics lift.
 *
 * <p>Formula: a load at distance a ahead of the front axle lifts the rear wheels at {@code W = TH b / a}, with rear
 * axle load TH and wheelbase b. Half of that is taken as usable, as loaders are rated; and the rear axle should keep
 * 45 % of the unladen tractor ({@link RearBallast}), so that {@code W = (TH - 0.45 TL) b / a}.
 *
 * <p>Source: tipping load and half of it, {@link Source#EARTH_MOVING_HANDBOOK}; share,
 * {@link Source#IMPLEMENT_MANUALS}. Valid on hard level ground at rest. Caution:
 * {@link Caution#BALLAST_BEFORE_LIFTING}, {@link Caution#CARRY_LOW}.
 */
public final class FrontLoadLimit {
    /** Share of the tipping load that may be used. */
    public static final Ratio OF_TIPPING = Ratio.ofPercent(50);

    /** Distance of the load ahead of the front axle, 4 in to 20 ft. */
    public static final Bounds<Length> AHEAD =
            new Bounds<>("load-ahead-of-front-axle", Length.ofInches(4), Length.ofFeet(20));

    private FrontLoadLimit() {}

    /**
     * The load that just lifts the rear wheels.
     *
     * @param axles as equipped and ballasted, without the load
     * @throws OutOfRangeException outside {@link #AHEAD}
     */
    public static Mass tipping(Axles axles, Length ahead) {
        return new Mass(Math.max(0, axles.rear().si() * axles.wheelbase().si() / AHEAD.check(ahead)));
    }

    /**
     * The load that leaves the rear axle its share of the unladen tractor.
     *
     * @param axles   as equipped and ballasted, without the load
     * @param tractor unladen tractor
     * @throws OutOfRangeException outside {@link #AHEAD}
     */
    public static Mass keepingRearShare(Axles axles, Mass tractor, Length ahead) {
        double spare = axles.rear().si() - RearBallast.REAR_SHARE.si() * tractor.si();
        return new Mass(Math.max(0, spare * axles.wheelbase().si() / AHEAD.check(ahead)));
    }
}
