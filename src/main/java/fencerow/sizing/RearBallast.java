package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;

/**
 * Smallest ballast behind the rear axle for a load in front.
 *
 * <p>Formula, as printed: {@code GHmin = [GV a - TH b + 0.45 TL b] / (b + c + d)}, with front load GV at a ahead of the
 * front axle, unladen tractor TL with TH on the rear axle, wheelbase b, ballast at c + d behind the rear axle. It keeps
 * 45 % of the unladen tractor's weight on the rear axle (the 20 % of other texts belongs to the front axle).
 *
 * <p>Source: {@link Source#IMPLEMENT_MANUALS}. Valid level and at rest, as a minimum; the loader's manual may ask for
 * more and for ballast on the hitch, which also spares the front axle. Caution:
 * {@link Caution#BALLAST_BEFORE_LIFTING}, {@link Caution#SLOPES}.
 */
public final class RearBallast {
    /** Share of the unladen tractor that must stay on the rear axle. */
    public static final Ratio REAR_SHARE = Ratio.ofPercent(45);

    private RearBallast() {}

    /**
     * Ballast needed; zero where none is.
     *
     * @param loaded  axle loads with the front load and everything else mounted, without the ballast
     * @param tractor unladen tractor
     * @param behind  where the ballast goes, behind the rear axle; zero for fluid or wheel weights
     * @throws OutOfRangeException outside {@link Axles#TRACTOR_MASS} or {@link Axles#DISTANCE}
     */
    public static Mass needed(Axles loaded, Mass tractor, Length behind) {
        double b = loaded.wheelbase().si();
        double missing = REAR_SHARE.si() * Axles.TRACTOR_MASS.check(tractor) - loaded.rear().si();
        return new Mass(Math.max(0, missing * b / (b + Axles.DISTANCE.check(behind))));
    }

    /**
     * Ballast with which neither half of the tipping load nor the rear axle's share stops a load in front
     * ({@link FrontLoadLimit} turned round); zero where neither does.
     *
     * @param axles   with everything mounted, without the load and the ballast
     * @param tractor unladen tractor
     * @param load    in front
     * @param ahead   of the front axle
     * @param behind  where the ballast goes, behind the rear axle
     * @throws OutOfRangeException outside {@link FrontLoadLimit#AHEAD}, {@link Axles#TRACTOR_MASS} or
     *     {@link Axles#DISTANCE}
     */
    public static Mass toLift(Axles axles, Mass tractor, Mass load, Length ahead, Length behind) {
        double b = axles.wheelbase().si();
        double takenOff = load.si() * FrontLoadLimit.AHEAD.check(ahead) / b;
        double rear = Math.max(
                takenOff / FrontLoadLimit.OF_TIPPING.si(),
                takenOff + REAR_SHARE.si() * Axles.TRACTOR_MASS.check(tractor));
        return new Mass(Math.max(0, (rear - axles.rear().si()) * b / (b + Axles.DISTANCE.check(behind))));
    }
}
