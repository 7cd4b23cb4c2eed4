package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Ratio;
import fencerow.terms.Spread;

/**
 * The front axle's usual share of a bare tractor, where a maker publishes only its whole mass. Source:
 * {@link Source#SMALL_TRACTOR_MANUAL}, {@link Source#WEIGHT_SPLIT_BULLETIN}. Caution:
 * {@link Caution#AXLE_AND_TIRE_RATINGS}.
 */
public enum WeightSplit {
    TWO_WHEEL_DRIVE("two-wheel-drive", 25, 35),
    FOUR_WHEEL_DRIVE("four-wheel-drive", 40, 45);

    private final String id;
    private final Spread<Ratio> frontShare;

    WeightSplit(String id, double low, double high) {
        this.id = id;
        this.frontShare = Spread.of(Ratio.ofPercent(low), Ratio.ofPercent(high));
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** The front axle's share, low to high. */
    public Spread<Ratio> frontShare() {
        return frontShare;
    }

    /** Axle loads at the middle of the usual shares; mass within {@link Axles#TRACTOR_MASS}. */
    public Axles axles(Mass tractor, Length wheelbase) {
        double front = Axles.TRACTOR_MASS.check(tractor) * (frontShare.low().si() + frontShare.high().si()) / 2;
        return new Axles(new Mass(front), new Mass(tractor.si() - front), wheelbase);
    }
}
