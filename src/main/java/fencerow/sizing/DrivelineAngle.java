package fencerow.sizing;

import fencerow.terms.Angle;
import fencerow.terms.Length;
import fencerow.terms.Time;

/**
 * Angle of a PTO driveline's joints, and how long a joint lasts at it.
 *
 * <p>Formula: angle {@code atan(C / L)} for a driveline of length L whose ends stand C apart; joint life at 60 hp, 540
 * rpm, medium series, linear between the manual's points.
 *
 * <p>Source: {@link Source#SNOW_BLOWER_MANUAL}. Valid from 5 to 25 degrees; one tiller manual wants the PTO stopped
 * above 35. Caution: {@link Caution#PTO_GUARDS}.
 */
public final class DrivelineAngle {
    /** Angles for which the manual gives a joint's life. */
    public static final Bounds<Angle> ANGLE = new Bounds<>("angle", Angle.ofDegrees(5), Angle.ofDegrees(25));
    /** Length or offset of the driveline, up to 10 ft. */
    public static final Bounds<Length> LENGTH =
            new Bounds<>("driveline-length", Length.ofInches(6), Length.ofFeet(10));

    private static final double[] DEGREES = {5, 10, 15, 20, 25};
    private static final double[] HOURS = {450, 195, 90, 40, 20};

    private DrivelineAngle() {}

    /**
     * Joint angle.
     *
     * @param length of the driveline
     * @param offset of its ends, 0 to {@code length}
     * @throws OutOfRangeException outside {@link #LENGTH}, or if the offset is longer than the driveline
     */
    public static Angle of(Length length, Length offset) {
        double l = LENGTH.check(length);
        return new Angle(Math.atan(new Bounds<>("offset", new Length(0), length).check(offset) / l));
    }

    /**
     * Joint life at an angle.
     *
     * @throws OutOfRangeException outside {@link #ANGLE}
     */
    public static Time life(Angle angle) {
        ANGLE.check(angle);
        double degrees = angle.toDegrees();
        int i = Math.min(DEGREES.length - 2, Math.max(0, (int) ((degrees - DEGREES[0]) / 5)));
        double part = (degrees - DEGREES[i]) / 5;
        return Time.ofHours(HOURS[i] + part * (HOURS[i + 1] - HOURS[i]));
    }
}
