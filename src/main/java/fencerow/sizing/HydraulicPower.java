package fencerow.sizing;

import fencerow.terms.Flow;
import fencerow.terms.Power;
import fencerow.terms.Pressure;
import fencerow.terms.Ratio;

/**
 * Power in a stream of oil.
 *
 * <p>Formula: {@code P = p Q}; in the trade's units {@code hp = psi x gpm / 1714}. Driving the pump takes that over its
 * efficiency.
 *
 * <p>Source: {@link Source#CYLINDER_FORMULAS}, {@link Source#FLUID_POWER_GUIDE}. Valid at the pump's rated speed only;
 * flow to the steering does not reach the tool. Caution: {@link Caution#OIL_INJECTION}.
 */
public final class HydraulicPower {
    /** Pump efficiency, 50 to 100 %. */
    public static final Bounds<Ratio> EFFICIENCY =
            new Bounds<>("pump-efficiency", Ratio.ofPercent(50), Ratio.ofPercent(100));

    private HydraulicPower() {}

    /** Power in the oil; within {@link Cylinder#PRESSURE} and {@link Cylinder#FLOW}. */
    public static Power of(Pressure pressure, Flow flow) {
        return new Power(Cylinder.PRESSURE.check(pressure) * Cylinder.FLOW.check(flow));
    }

    /** Power that drives the pump; efficiency within {@link #EFFICIENCY}. */
    public static Power toDrive(Pressure pressure, Flow flow, Ratio efficiency) {
        return new Power(of(pressure, flow).si() / EFFICIENCY.check(efficiency));
    }
}
