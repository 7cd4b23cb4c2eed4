package fencerow.sizing;

import fencerow.terms.Ratio;
import fencerow.terms.Spread;
import fencerow.terms.Time;

/**
 * Repairs accumulated over a machine's hours, as a share of the list price.
 *
 * <p>Formula: {@code A = RF1 (h / 1000)^RF2}.
 *
 * <p>Source: {@link Source#MACHINERY_MANAGEMENT_DATA}, from memory; the two-wheel-drive row agrees with
 * {@link Source#TRACTOR_COSTS_ARTICLE}. Valid to the life named. It gives next to nothing at a compact's hours: add
 * {@link #SERVICE_FLOOR} a year for filters, fluids, tires and battery. Caution:
 * {@link Caution#ESTIMATE_NOT_APPRAISAL}.
 */
public enum RepairCost {
    TRACTOR_2WD("tractor-2wd", 0.007, 2.0, 12_000),
    TRACTOR_4WD("tractor-4wd", 0.003, 2.0, 16_000),
    ROTARY_MOWER("rotary-mower", 0.44, 2.0, 2000),
    ROTARY_TILLER("rotary-tiller", 0.36, 2.0, 1500),
    DISC_MOWER_CONDITIONER("disc-mower-conditioner", 0.16, 2.0, 2500);

    /** Least yearly upkeep of a tractor, as a share of list price: common practice, no source. */
    public static final Spread<Ratio> SERVICE_FLOOR =
            Spread.of(Ratio.ofPercent(1), Ratio.ofPercent(2));

    private final String id;
    private final double factor;
    private final double exponent;
    private final Time life;

    RepairCost(String id, double factor, double exponent, double lifeHours) {
        this.id = id;
        this.factor = factor;
        this.exponent = exponent;
        this.life = Time.ofHours(lifeHours);
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Hours for which the equation is meant. */
    public Time life() {
        return life;
    }

    /** Share of list price spent by then; hours from 0 to {@link #life}. */
    public Ratio accumulated(Time hours) {
        double h = new Bounds<>("hours", new Time(0), life).check(hours);
        return new Ratio(factor * Math.pow(new Time(h).toHours() / 1000, exponent));
    }

    /** Share of list price spent between two meter readings, {@code from} not above {@code to}. */
    public Ratio between(Time from, Time to) {
        return new Ratio(accumulated(to).si() - accumulated(from).si());
    }
}
