package fencerow.sizing;

import fencerow.terms.Angle;
import fencerow.terms.Length;

/**
 * Path that an angled blade clears, and passes over a drive.
 *
 * <p>Formula: {@code w' = w cos(angle)}; passes are the drive's width over {@code w'} less the overlap, rounded up. The
 * path should be wider than the wheels by 6 in on each side.
 *
 * <p>Source: {@link Source#GEOMETRY}; margin {@link Source#SNOW_PLOW_MANUAL}. Valid to 45 degrees. Caution:
 * {@link Caution#HIDDEN_UNDER_SNOW}.
 */
public final class AngledBlade {
    /** Blade width, 3 to 12 ft. */
    public static final Bounds<Length> WIDTH = new Bounds<>("blade-width", Length.ofFeet(3), Length.ofFeet(12));
    /** Angle from straight ahead, 0 to 45 degrees. */
    public static final Bounds<Angle> ANGLE = new Bounds<>("blade-angle", Angle.ofDegrees(0), Angle.ofDegrees(45));
    /** Width of the drive, 3 to 300 ft. */
    public static final Bounds<Length> DRIVE = new Bounds<>("drive-width", Length.ofFeet(3), Length.ofFeet(300));
    /** Path beyond the wheels on each side. */
    public static final Length BESIDE_WHEELS = Length.ofInches(6);

    private AngledBlade() {}

    /** Cleared path; within {@link #WIDTH} and {@link #ANGLE}. */
    public static Length path(Length width, Angle angle) {
        return new Length(WIDTH.check(width) * Math.cos(ANGLE.check(angle)));
    }

    /**
     * Passes over a drive.
     *
     * @param overlap between passes, below half the path
     * @throws OutOfRangeException outside the limits, or for too large an overlap
     */
    public static int passes(Length drive, Length width, Angle angle, Length overlap) {
        Length path = path(width, angle);
        double lost = new Bounds<>("overlap", new Length(0), new Length(path.si() / 2)).check(overlap);
        return (int) Math.ceil((DRIVE.check(drive) - lost) / (path.si() - lost) - 1e-9);
    }

    /** What the path is wider than the wheels on each side; negative where the wheels ride on snow. */
    public static Length besideWheels(Length path, Length track) {
        return new Length((path.si() - track.si()) / 2);
    }
}
