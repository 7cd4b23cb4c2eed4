package fencerow.sizing;

import fencerow.terms.Angle;
import fencerow.terms.Length;

/**
 * Space that a tractor needs to turn round, and its length with what is mounted.
 *
 * <p>Formula: with wheelbase b, largest steering angle s of the inner front wheel and track t, the rear axle's center
 * runs a circle of {@code R = b / tan(s) + t / 2}; the outermost point, w wide and reaching f ahead of the front axle,
 * runs one of {@code sqrt((R + w / 2)^2 + (b + f)^2)}.
 *
 * <p>Source: {@link Source#GEOMETRY}. Valid at a walk on firm ground without brakes; a rear tool swings out and needs
 * its own look. Caution: {@link Caution#CARRY_LOW}.
 */
public final class TurningSpace {
    /** Steering angle of the inner wheel, 15 to 75 degrees. */
    public static final Bounds<Angle> STEERING =
            new Bounds<>("steering-angle", Angle.ofDegrees(15), Angle.ofDegrees(75));
    /** Width over the wheels or over the tool, 2 to 12 ft. */
    public static final Bounds<Length> WIDTH = new Bounds<>("width", Length.ofFeet(2), Length.ofFeet(12));
    /** Reach ahead of the front axle or behind the rear one, up to 15 ft. */
    public static final Bounds<Length> OVERHANG = new Bounds<>("overhang", new Length(0), Length.ofFeet(15));

    private TurningSpace() {}

    /**
     * Radius of the circle that holds the whole turn.
     *
     * @param track over the middle of the wheels
     * @param width of the widest thing in front, such as a bucket
     * @param reach ahead of the front axle
     * @throws OutOfRangeException outside {@link Axles#WHEELBASE}, {@link #STEERING}, {@link #WIDTH} or
     *         {@link #OVERHANG}
     */
    public static Length radius(Length wheelbase, Angle steering, Length track, Length width, Length reach) {
        double b = Axles.WHEELBASE.check(wheelbase);
        double axle = b / Math.tan(STEERING.check(steering)) + WIDTH.as("track").check(track) / 2;
        return new Length(Math.hypot(axle + WIDTH.check(width) / 2, b + OVERHANG.as("reach").check(reach)));
    }

    /** Length with what reaches ahead of the front axle and behind the rear one; within the same limits. */
    public static Length length(Length wheelbase, Length ahead, Length behind) {
        return new Length(Axles.WHEELBASE.check(wheelbase)
                + OVERHANG.as("reach-ahead").check(ahead)
                + OVERHANG.as("reach-behind").check(behind));
    }
}
