package fencerow.sizing;

import fencerow.terms.Flow;
import fencerow.terms.Power;
import fencerow.terms.Ratio;

/**
 * Fuel that a tractor burns.
 *
 * <p>Formula: over a year's mix of work {@code gal/h = 0.044 x hp} for diesel and 0.060 for gasoline, with the largest
 * PTO power; at a share X of it, {@code gal/hp-h = 0.52 X + 0.77 - 0.04 sqrt(738 X + 173)}, for diesel. Oil and filters
 * add 15 % of the fuel's cost.
 *
 * <p>Source: average and oil {@link Source#TRACTOR_COSTS_ARTICLE}, {@link Source#COST_EQUATIONS}; by load
 * {@link Source#MACHINERY_MANAGEMENT_DATA}, from memory. Valid from 10 to 100 % load. Caution:
 * {@link Caution#ESTIMATE_NOT_APPRAISAL}.
 */
public enum FuelUse {
    DIESEL("diesel", 0.044),
    GASOLINE("gasoline", 0.060);

    /** Oil and filters as a share of the fuel's cost. */
    public static final Ratio LUBRICANTS = Ratio.ofPercent(15);
    /** Load for the diesel curve. */
    public static final Bounds<Ratio> LOAD = new Bounds<>("load", Ratio.ofPercent(10), Ratio.ofPercent(100));

    private final String id;
    private final double gallonsPerHorsepowerHour;

    FuelUse(String id, double gallonsPerHorsepowerHour) {
        this.id = id;
        this.gallonsPerHorsepowerHour = gallonsPerHorsepowerHour;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Average over a year's work; PTO power within {@link PtoPower#POWER}. */
    public Flow average(Power pto) {
        PtoPower.POWER.check(pto);
        return Flow.ofGallonsPerHour(gallonsPerHorsepowerHour * pto.toHorsepower());
    }

    /** Diesel burnt at a share of the PTO power; within {@link PtoPower#POWER} and {@link #LOAD}. */
    public static Flow dieselAt(Power pto, Ratio load) {
        PtoPower.POWER.check(pto);
        double x = LOAD.check(load);
        double specific = 0.52 * x + 0.77 - 0.04 * Math.sqrt(738 * x + 173);
        return Flow.ofGallonsPerHour(specific * x * pto.toHorsepower());
    }
}
