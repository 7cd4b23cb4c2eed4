package fencerow.sizing;

import fencerow.terms.Area;
import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Volume;

/**
 * Volume and mass of snow on a drive, and how high it stands where it is put.
 *
 * <p>Formula: {@code V = area x depth}, {@code m = V x density}; water equivalent {@code depth x density / 1000}.
 * Pushed aside it settles to a ridge with slopes of 1 to 1 over the length there is: {@code h = sqrt(V / L)} with the
 * volume shrunk in the ratio of the densities.
 *
 * <p>Source: {@link Source#SNOW_PLOW_MANUAL}, {@link Source#SNOW_DENSITY_PAGE}, {@link Source#GEOMETRY}. Valid for
 * 0.5 in to 6 ft and 10 to 600 kg/m3. Caution: {@link Caution#HIDDEN_UNDER_SNOW}.
 */
public final class SnowCover {
    /** Area to clear, up to 50 acres. */
    public static final Bounds<Area> AREA = new Bounds<>("area", Area.ofSquareFeet(100), Area.ofAcres(50));
    /** Depth, half an inch to 6 ft. */
    public static final Bounds<Length> DEPTH = new Bounds<>("depth", Length.ofInches(0.5), Length.ofFeet(6));
    /** Density of snow, 10 to 600 kg/m3. */
    public static final Bounds<Density> DENSITY = new Bounds<>(
            "density", Density.ofKilogramsPerCubicMeter(10), Density.ofKilogramsPerCubicMeter(600));
    /** Length of the ridge, 3 ft to 10 miles. */
    public static final Bounds<Length> RIDGE = new Bounds<>("ridge-length", Length.ofFeet(3), Length.ofFeet(52_800));

    private static final double WATER = 1000;

    private SnowCover() {}

    /** Volume; within {@link #AREA} and {@link #DEPTH}. */
    public static Volume volume(Area area, Length depth) {
        return new Volume(AREA.check(area) * DEPTH.check(depth));
    }

    /** Mass; within {@link #AREA}, {@link #DEPTH} and {@link #DENSITY}. */
    public static Mass mass(Area area, Length depth, Density density) {
        return new Mass(volume(area, depth).si() * DENSITY.check(density));
    }

    /** Depth of the water it melts to; within {@link #DEPTH} and {@link #DENSITY}. */
    public static Length water(Length depth, Density density) {
        return new Length(DEPTH.check(depth) * DENSITY.check(density) / WATER);
    }

    /**
     * Height of the ridge that the cleared snow makes.
     *
     * @param fresh   density as it lies
     * @param settled density in the ridge, not below {@code fresh}
     * @throws OutOfRangeException outside {@link #RIDGE} or {@link #DENSITY}
     */
    public static Length ridgeHeight(Volume cleared, Density fresh, Density settled, Length ridge) {
        double shrunk = cleared.si() * DENSITY.check(fresh)
                / new Bounds<>("settled-density", fresh, DENSITY.max()).check(settled);
        return new Length(Math.sqrt(shrunk / RIDGE.check(ridge)));
    }
}
