package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;

/**
 * The load that a loader lifts to full height with what it carries, and which rule stops it there: hydraulics, half the
 * tipping load, or the weight the rear axle must keep.
 *
 * <p>Formula and source: {@link LiftAtDistance} and {@link FrontLoadLimit}; the smallest rules. Caution:
 * {@link Caution#NOT_AN_APPROVAL}, {@link Caution#BALLAST_BEFORE_LIFTING}, {@link Caution#NOBODY_UNDER_LOAD}.
 *
 * @param hydraulic   what the hydraulics lift at the load's center
 * @param halfTipping half of the load that lifts the rear wheels
 * @param rearShare   the load that leaves the rear axle its share
 */
public record LoaderPayload(Mass hydraulic, Mass halfTipping, Mass rearShare) {

    /**
     * Computes all three.
     *
     * @param lift    the loader's ratings
     * @param axles   as equipped and ballasted, loader on, without what is carried
     * @param tractor unladen tractor
     * @param pins    the bucket pins ahead of the front axle
     * @param center  the load's center ahead of the pins
     * @param carried coupler, forks or bucket
     * @throws OutOfRangeException outside the limits of {@link LiftAtDistance} or {@link FrontLoadLimit}
     */
    public static LoaderPayload of(
            LiftAtDistance lift, Axles axles, Mass tractor, Length pins, Length center, Carried... carried) {
        Axles loaded = axles;
        for (Carried each : carried) {
            loaded = loaded.withAhead(each.mass(), new Length(pins.si() + each.center().si()));
        }
        Length ahead = new Length(pins.si() + center.si());
        Mass tipping = FrontLoadLimit.tipping(loaded, ahead);
        return new LoaderPayload(
                lift.payload(center, carried),
                new Mass(tipping.si() * FrontLoadLimit.OF_TIPPING.si()),
                FrontLoadLimit.keepingRearShare(loaded, tractor, ahead));
    }

    /** The smallest of the three. */
    public Mass usable() {
        return new Mass(Math.min(hydraulic.si(), Math.min(halfTipping.si(), rearShare.si())));
    }

    /** The rule that gives {@link #usable}. */
    public Limit limit() {
        double least = usable().si();
        if (hydraulic.si() == least) {
            return Limit.HYDRAULICS;
        }
        return halfTipping.si() == least ? Limit.TIPPING : Limit.REAR_AXLE_SHARE;
    }
}
