package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import fencerow.terms.Volume;

/**
 * Liquid ballast in tires.
 *
 * <p>Formula: mass is the volume at 75 % fill times the fluid's density. Where a size is not charted, in inches:
 * {@code gal = 0.47 x pi / 4 x (OD^2 - RD^2) x S / 231}, with overall diameter OD, rim diameter RD and section S.
 * Calcium chloride by weight, f pounds of 77 % flake per gallon of water: {@code 0.77 f / (8.34 + f)}.
 *
 * <p>Source: {@link TireSize}, {@link Fluid}, {@link Source#TIRE_GEOMETRY}, {@link Source#HIGHWAY_BRINE_STUDY}. Valid
 * up to 75 %: air is the tire's spring, and a full one breaks on impact. Caution: {@link Caution#FLUID_FILL_LIMIT},
 * {@link Caution#FLUID_CORROSION}, {@link Caution#FLUID_POISON}, {@link Caution#FLUID_ROAD_SPEED}.
 */
public final class TireFluid {
    /** Overall diameter, 15 to 80 in. */
    public static final Bounds<Length> OVERALL_DIAMETER =
            new Bounds<>("overall-diameter", Length.ofInches(15), Length.ofInches(80));
    /** Section width, 4 to 30 in. */
    public static final Bounds<Length> SECTION = new Bounds<>("section", Length.ofInches(4), Length.ofInches(30));
    /** Tires filled. */
    public static final int MOST_TIRES = 8;

    /** Measured over the charted sizes it ran from 0.43 to 0.515. */
    private static final double FILLED_SHARE = 0.47;
    /** Share of calcium chloride in 77 % flake. */
    private static final double FLAKE_STRENGTH = 0.77;

    private TireFluid() {}

    /**
     * Mass of the liquid in all tires together.
     *
     * @throws IllegalArgumentException if there are no tires or more than {@link #MOST_TIRES}
     */
    public static Mass mass(TireSize size, Fluid fluid, int tires) {
        return new Mass(volume(size, tires).si() * fluid.density().si());
    }

    /** Volume of the liquid in all tires together; tires as for {@link #mass}. */
    public static Volume volume(TireSize size, int tires) {
        if (tires < 1 || tires > MOST_TIRES) {
            throw new IllegalArgumentException(tires + " tires; give 1 to " + MOST_TIRES);
        }
        return new Volume(size.fill().si() * tires);
    }

    /**
     * Estimate of the volume at 75 % fill from a tire's sizes, within 15 %.
     *
     * @param rim diameter, smaller than the overall one
     * @throws OutOfRangeException outside {@link #OVERALL_DIAMETER} or {@link #SECTION}, or for too large a rim
     */
    public static Volume estimate(Length overall, Length rim, Length section) {
        double od = OVERALL_DIAMETER.check(overall);
        double rd = new Bounds<>("rim-diameter", Length.ofInches(6), overall).check(rim);
        return new Volume(FILLED_SHARE * Math.PI / 4 * (od * od - rd * rd) * SECTION.check(section));
    }

    /**
     * Calcium chloride by weight of the mix. Above about 30 % more flake makes it freeze warmer again.
     *
     * @param poundsOfFlakePerGallon 77 % flake per US gallon of water, 0 to 8
     */
    public static Ratio calciumChloride(double poundsOfFlakePerGallon) {
        if (!(poundsOfFlakePerGallon >= 0 && poundsOfFlakePerGallon <= 8)) {
            throw new IllegalArgumentException(
                    "flake " + poundsOfFlakePerGallon + " lb per gallon is outside the valid range; give 0 to 8");
        }
        double water = Fluid.WATER.density().toPoundsPerGallon();
        return new Ratio(FLAKE_STRENGTH * poundsOfFlakePerGallon / (water + poundsOfFlakePerGallon));
    }
}
