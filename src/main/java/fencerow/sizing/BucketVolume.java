package fencerow.sizing;

import fencerow.terms.Area;
import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import fencerow.terms.Volume;

/**
 * Struck and heaped volume of a loader bucket, and the mass of a bucketful.
 *
 * <p>Formula: the strike plane runs from the cutting edge to the top of the back; struck volume lies below it, {@code
 * Vs = A w} for an inside end area A and inside width w. A heap with slopes of 1 up to 2 along on all sides of a strike
 * plane b deep adds {@code Vt = b^2 w / 8 - b^3 / 24}; rated volume is {@code Vs + Vt}.
 *
 * <p>Source: {@link Source#BUCKET_RATING} for the definitions and slopes, {@link Source#GEOMETRY} for the heap. Valid
 * for strike planes not deeper than wide. Makers quote the rated (heaped) volume; wet material weighs 20 to 30 % more.
 * Caution: {@link Caution#CARRY_LOW}.
 */
public final class BucketVolume {
    /** Inside width, 2 to 10 ft. */
    public static final Bounds<Length> WIDTH = new Bounds<>("bucket-width", Length.ofFeet(2), Length.ofFeet(10));
    /** Cutting edge to the top of the back, 8 in to 4 ft. */
    public static final Bounds<Length> STRIKE_DEPTH =
            new Bounds<>("strike-depth", Length.ofInches(8), Length.ofFeet(4));
    /** Inside end area below the strike plane. */
    public static final Bounds<Area> END_AREA =
            new Bounds<>("end-area", Area.ofSquareFeet(0.2), Area.ofSquareFeet(12));
    /** Share of the volume really filled. */
    public static final Bounds<Ratio> FILL = new Bounds<>("fill", Ratio.ofPercent(10), Ratio.ofPercent(130));
    /** Bulk density of the material. */
    public static final Bounds<Density> DENSITY = new Bounds<>(
            "density", Density.ofKilogramsPerCubicMeter(10), Density.ofKilogramsPerCubicMeter(3000));
    /** A bucket's volume, up to 4 cubic yards. */
    public static final Bounds<Volume> VOLUME =
            new Bounds<>("bucket-volume", Volume.ofCubicFeet(0.5), Volume.ofCubicYards(4));

    private BucketVolume() {}

    /**
     * Volume below the strike plane.
     *
     * @throws OutOfRangeException outside {@link #END_AREA} or {@link #WIDTH}
     */
    public static Volume struck(Area endArea, Length width) {
        return new Volume(END_AREA.check(endArea) * WIDTH.check(width));
    }

    /**
     * Volume of the heap on the strike plane.
     *
     * @throws OutOfRangeException outside {@link #STRIKE_DEPTH} or {@link #WIDTH}, or if deeper than wide
     */
    public static Volume heap(Length width, Length strikeDepth) {
        double w = WIDTH.check(width);
        STRIKE_DEPTH.check(strikeDepth);
        double b = new Bounds<>("strike-depth", STRIKE_DEPTH.min(), width).check(strikeDepth);
        return new Volume(b * b * w / 8 - b * b * b / 24);
    }

    /** Struck volume and heap together. */
    public static Volume rated(Area endArea, Length width, Length strikeDepth) {
        return new Volume(struck(endArea, width).si() + heap(width, strikeDepth).si());
    }

    /**
     * Mass of a bucketful.
     *
     * @throws OutOfRangeException outside {@link #VOLUME}, {@link #DENSITY} or {@link #FILL}
     */
    public static Mass mass(Volume volume, Density density, Ratio fill) {
        return new Mass(VOLUME.check(volume) * DENSITY.check(density) * FILL.check(fill));
    }
}
