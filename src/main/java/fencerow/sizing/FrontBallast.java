package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;

/**
 * Smallest ballast ahead of the front axle for an implement raised behind.
 *
 * <p>Formula, as printed: {@code GVmin = [GH (c + d) - TV b + 0.2 TL b] / (a + b)}, with rear load GH at c + d behind
 * the rear axle, unladen tractor TL with TV on the front axle, wheelbase b, ballast at a ahead of the front axle. It
 * keeps 20 % of the <em>unladen</em> tractor's weight on the steering axle, the mildest of three wordings in print;
 * {@link #neededOfWhole} takes 20 % of tractor with equipment.
 *
 * <p>Source: {@link Source#IMPLEMENT_MANUALS}, {@link Source#ROTARY_CUTTER_MANUAL}. Valid level and at rest, as a
 * minimum. Caution: {@link Caution#STEERING_WEIGHT}.
 */
public final class FrontBallast {
    /** Share that must stay on the front axle. */
    public static final Ratio FRONT_SHARE = Ratio.ofPercent(20);

    private FrontBallast() {}

    /**
     * Ballast that keeps the share of the unladen tractor; zero where none is needed.
     *
     * @param loaded  axle loads with the implement raised, without the ballast
     * @param tractor unladen tractor
     * @param ahead   where the ballast goes, ahead of the front axle
     * @throws OutOfRangeException outside {@link Axles#TRACTOR_MASS} or {@link Axles#DISTANCE}
     */
    public static Mass needed(Axles loaded, Mass tractor, Length ahead) {
        double b = loaded.wheelbase().si();
        double missing = FRONT_SHARE.si() * Axles.TRACTOR_MASS.check(tractor) - loaded.front().si();
        return new Mass(Math.max(0, missing * b / (b + Axles.DISTANCE.check(ahead))));
    }

    /**
     * Ballast that keeps the share of everything standing on the axles, the ballast included; zero where none is
     * needed.
     *
     * @param loaded axle loads with the implement raised, without the ballast
     * @param ahead  where the ballast goes, ahead of the front axle
     * @throws OutOfRangeException outside {@link Axles#DISTANCE}
     */
    public static Mass neededOfWhole(Axles loaded, Length ahead) {
        double b = loaded.wheelbase().si();
        double missing = FRONT_SHARE.si() * loaded.total().si() - loaded.front().si();
        double gain = 1 + Axles.DISTANCE.check(ahead) / b - FRONT_SHARE.si();
        return new Mass(Math.max(0, missing / gain));
    }
}
