package fencerow.sizing;

import fencerow.terms.Area;
import fencerow.terms.Length;
import fencerow.terms.Ratio;
import fencerow.terms.Speed;
import fencerow.terms.Spread;
import fencerow.terms.Time;

/**
 * Usual speeds and field efficiencies of machines, low to high with the typical value.
 *
 * <p>Source: {@link Source#MACHINERY_MANAGEMENT_DATA} where nothing else is named. The standard's rotary mower is a
 * hay disc mower: for a brush-type cutter or a deck its 5 to 12 mph would overstate the work done two- to three-fold,
 * so those have rows of their own.
 */
public enum FieldMachine {
    /** Deck or finish mower on a lawn with beds and trees. */
    LAWN_MOWER("lawn-mower", 60, 75, 70, 2, 5, 4, Source.TRADE_PRACTICE),
    /** Brush-type rotary cutter on open pasture. */
    ROTARY_CUTTER("rotary-cutter", 80, 85, 80, 2, 5, 4, Source.ROTARY_CUTTER_MANUAL),
    SICKLE_MOWER("sickle-mower", 75, 85, 80, 3, 6, 5),
    /** Hay disc mower; what the standard calls a rotary mower. */
    DISC_MOWER("disc-mower", 75, 90, 80, 5, 12, 7),
    MOWER_CONDITIONER("mower-conditioner", 75, 85, 80, 3, 6, 5),
    ROTARY_TILLER("rotary-tiller", 70, 90, 85, 1, 4.5, 3),
    MOLDBOARD_PLOW("moldboard-plow", 70, 90, 85, 3, 6, 4.5),
    TANDEM_DISK("tandem-disk", 70, 90, 80, 4, 7, 6),
    ROW_CROP_PLANTER("row-crop-planter", 50, 75, 65, 4, 7, 5.5),
    GRAIN_DRILL("grain-drill", 55, 80, 70, 4, 7, 5),
    FERTILIZER_SPREADER("fertilizer-spreader", 60, 80, 70, 5, 10, 7),
    BOOM_SPRAYER("boom-sprayer", 50, 80, 65, 3, 7, 6.5),
    SIDE_RAKE("side-rake", 70, 90, 80, 4, 8, 6);

    private final String id;
    private final Spread<Ratio> efficiency;
    private final Ratio typicalEfficiency;
    private final Spread<Speed> speed;
    private final Speed typicalSpeed;
    private final Source source;

    FieldMachine(String id, double low, double high, double typical, double slow, double fast, double usual) {
        this(id, low, high, typical, slow, fast, usual, Source.MACHINERY_MANAGEMENT_DATA);
    }

    FieldMachine(
            String id,
            double low,
            double high,
            double typical,
            double slow,
            double fast,
            double usual,
            Source source) {
        this.id = id;
        this.efficiency = Spread.of(Ratio.ofPercent(low), Ratio.ofPercent(high));
        this.typicalEfficiency = Ratio.ofPercent(typical);
        this.speed = Spread.of(Speed.ofMph(slow), Speed.ofMph(fast));
        this.typicalSpeed = Speed.ofMph(usual);
        this.source = source;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Usual field efficiencies. */
    public Spread<Ratio> efficiency() {
        return efficiency;
    }

    /** The typical field efficiency. */
    public Ratio typicalEfficiency() {
        return typicalEfficiency;
    }

    /** Usual travel speeds. */
    public Spread<Speed> speed() {
        return speed;
    }

    /** The typical travel speed. */
    public Speed typicalSpeed() {
        return typicalSpeed;
    }

    /** Where the row comes from. */
    public Source source() {
        return source;
    }

    /** The width that finishes the area in the time at usual speed and efficiency. */
    public Length typicalWidth(Area area, Time time) {
        return FieldCapacity.widthToFinish(area, time, typicalSpeed(), typicalEfficiency());
    }
}
