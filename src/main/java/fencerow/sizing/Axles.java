package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;

/**
 * The loads on a tractor's two axles, standing level, and how they change with what is hung on.
 *
 * <p>Formula: a load W at distance x ahead of the front axle, wheelbase b, adds {@code W (x + b) / b} to the front axle
 * and takes {@code W x / b} from the rear. A load on the hitch has x = -(b + c + d), with c from rear axle to ball ends
 * and d from ball ends to the load's center. A negative rear load means that the tractor has tipped.
 *
 * <p>Source: {@link Source#IMPLEMENT_MANUALS}; the same as plane statics. Valid level and at rest: braking, turning and
 * a raised load need more. Caution: {@link Caution#AXLE_AND_TIRE_RATINGS}, {@link Caution#SLOPES}.
 *
 * @param front     on the front axle
 * @param rear      on the rear axle
 * @param wheelbase between the axles, 2 to 12 ft
 */
public record Axles(Mass front, Mass rear, Length wheelbase) {
    /** Between the axles. */
    public static final Bounds<Length> WHEELBASE = new Bounds<>("wheelbase", Length.ofFeet(2), Length.ofFeet(12));
    /** Unladen tractor, up to 10 t. */
    public static final Bounds<Mass> TRACTOR_MASS =
            new Bounds<>("tractor-mass", Mass.ofKilograms(100), Mass.ofKilograms(10_000));
    /** A load ahead or behind, up to 5 t. */
    public static final Bounds<Mass> LOAD = new Bounds<>("load", Mass.ofKilograms(0), Mass.ofKilograms(5000));
    /** Distance of a load from the nearer axle, up to 20 ft. */
    public static final Bounds<Length> DISTANCE = new Bounds<>("distance", Length.ofFeet(-5), Length.ofFeet(20));

    /** @throws OutOfRangeException if the wheelbase is outside {@link #WHEELBASE} */
    public Axles {
        WHEELBASE.check(wheelbase);
    }

    /**
     * The unladen tractor from its center of gravity.
     *
     * @param ahead distance of the center of gravity ahead of the rear axle, up to the wheelbase
     * @throws OutOfRangeException outside {@link #TRACTOR_MASS}, or if {@code ahead} is not between the axles
     */
    public static Axles fromCenterOfGravity(Mass tractor, Length ahead, Length wheelbase) {
        double mass = TRACTOR_MASS.check(tractor);
        double share =
                new Bounds<>("center-of-gravity", new Length(0), wheelbase).check(ahead) / wheelbase.si();
        return new Axles(new Mass(mass * share), new Mass(mass * (1 - share)), wheelbase);
    }

    /** With a load {@code ahead} of the front axle; behind it where {@code ahead} is negative. */
    public Axles withAhead(Mass load, Length ahead) {
        double shift = load.si() * ahead.si() / wheelbase.si();
        return new Axles(new Mass(front.si() + load.si() + shift), new Mass(rear.si() - shift), wheelbase);
    }

    /** With a load {@code behind} the rear axle; in or on the rear wheels where that is zero. */
    public Axles withBehind(Mass load, Length behind) {
        double shift = load.si() * behind.si() / wheelbase.si();
        return new Axles(new Mass(front.si() - shift), new Mass(rear.si() + load.si() + shift), wheelbase);
    }

    /** Both axles together. */
    public Mass total() {
        return new Mass(front.si() + rear.si());
    }

    /** The front axle's share of the total. */
    public Ratio frontShare() {
        return new Ratio(front.si() / (front.si() + rear.si()));
    }
}
