package fencerow.sizing;

import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.MassRate;
import fencerow.terms.Power;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;

/**
 * Snow that a blower moves, and the power that throwing it takes.
 *
 * <p>Formula: {@code m' = w d v density}; throwing takes {@code m' u^2 / 2} over the machine's efficiency, with throw
 * speed u.
 *
 * <p>Source: {@link Source#GEOMETRY} and mechanics; 30 to 40 % efficiency and 5 to 8 PTO hp per foot
 * {@link Source#TRADE_PRACTICE} ({@link ImplementPower#SNOW_BLOWER}). No published power by width was found. Caution:
 * {@link Caution#BLOWER_CLEARING}, {@link Caution#PTO_GUARDS}.
 */
public final class SnowBlower {
    /** Width, 3 to 10 ft. */
    public static final Bounds<Length> WIDTH = new Bounds<>("blower-width", Length.ofFeet(3), Length.ofFeet(10));
    /** Travel speed, 0.1 to 6 mph. */
    public static final Bounds<Speed> SPEED = new Bounds<>("speed", Speed.ofMph(0.1), Speed.ofMph(6));
    /** Speed at which the snow leaves, 5 to 30 m/s. */
    public static final Bounds<Speed> THROW =
            new Bounds<>("throw-speed", Speed.ofMetersPerSecond(5), Speed.ofMetersPerSecond(30));
    /** Of the machine, 10 to 100 %. */
    public static final Bounds<Ratio> EFFICIENCY =
            new Bounds<>("blower-efficiency", Ratio.ofPercent(10), Ratio.ofPercent(100));

    private SnowBlower() {}

    /** Mass moved; within {@link #WIDTH}, {@link SnowCover#DEPTH}, {@link #SPEED}, {@link SnowCover#DENSITY}. */
    public static MassRate rate(Length width, Length depth, Speed speed, Density density) {
        return new MassRate(WIDTH.check(width)
                * SnowCover.DEPTH.check(depth)
                * SPEED.check(speed)
                * SnowCover.DENSITY.check(density));
    }

    /** Power that throwing takes; within {@link #THROW} and {@link #EFFICIENCY}. */
    public static Power throwPower(MassRate rate, Speed throwSpeed, Ratio efficiency) {
        double u = THROW.check(throwSpeed);
        return new Power(rate.si() * u * u / 2 / EFFICIENCY.check(efficiency));
    }
}
