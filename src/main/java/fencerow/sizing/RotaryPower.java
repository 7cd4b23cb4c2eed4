package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Power;

/**
 * Average PTO power of hay tools at the cutter, without traction and reserve.
 *
 * <p>Formula: {@code P = b w}, b in kW per meter of width (the standard's {@code a + b w + c F} with a and c zero for
 * these rows); 1 kW/m is 0.409 hp/ft.
 *
 * <p>Source: {@link Source#MACHINERY_MANAGEMENT_DATA}, from memory. Valid for hay crops on level ground. Caution:
 * {@link Caution#PTO_GUARDS}.
 */
public enum RotaryPower {
    SICKLE_MOWER("sickle-mower", 1.2),
    DISC_MOWER("disc-mower", 5.0),
    DISC_MOWER_CONDITIONER("disc-mower-conditioner", 8.0),
    FLAIL_MOWER("flail-mower", 10.0);

    private final String id;
    private final double wattsPerMeter;

    RotaryPower(String id, double kilowattsPerMeter) {
        this.id = id;
        this.wattsPerMeter = 1000 * kilowattsPerMeter;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Average demand for a width within {@link ImplementPower#WIDTH}. */
    public Power needed(Length width) {
        return new Power(wattsPerMeter * ImplementPower.WIDTH.check(width));
    }
}
