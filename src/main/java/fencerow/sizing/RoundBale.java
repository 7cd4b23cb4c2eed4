package fencerow.sizing;

import fencerow.terms.Density;
import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Volume;

/**
 * Mass of a round bale from its size.
 *
 * <p>Formula: {@code m = pi / 4 x D^2 x w x density}, with diameter D and width w.
 *
 * <p>Source: {@link Source#BALE_WEIGHT}: a bale 5 ft by 5 ft holds 98.2 ft3, at 1,100 lb 11.2 lb/ft3. Valid for bales
 * of 2 to 6 ft; wet or tight ones weigh more. Caution: {@link Caution#BALE_ROLLS_BACK}.
 */
public final class RoundBale {
    /** Diameter or width, 2 to 6 ft. */
    public static final Bounds<Length> SIZE = new Bounds<>("bale-size", Length.ofFeet(2), Length.ofFeet(6));
    /** Density, 5 to 20 lb/ft3. */
    public static final Bounds<Density> DENSITY =
            new Bounds<>("bale-density", Density.ofPoundsPerCubicFoot(5), Density.ofPoundsPerCubicFoot(20));
    /** Of the bulletin's worked example. */
    public static final Density TYPICAL = Density.ofPoundsPerCubicFoot(11.2);

    private RoundBale() {}

    /** Volume of the cylinder; sizes within {@link #SIZE}. */
    public static Volume volume(Length diameter, Length width) {
        double d = SIZE.as("bale-diameter").check(diameter);
        return new Volume(Math.PI / 4 * d * d * SIZE.as("bale-width").check(width));
    }

    /** Mass; sizes within {@link #SIZE}, density within {@link #DENSITY}. */
    public static Mass mass(Length diameter, Length width, Density density) {
        return new Mass(volume(diameter, width).si() * DENSITY.check(density));
    }
}
