package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Power;
import fencerow.terms.Spread;

/**
 * Power that a tool asks for by its width, light to heavy conditions, and the width that a power drives.
 *
 * <p>Formula: {@code P = p w}, with p in horsepower per foot of width: at the PTO for driven tools, at the engine for
 * those that are only pulled (where traction, so weight, counts more).
 *
 * <p>Source: rotary cutter {@link Source#CUTTER_POWER_TABLE}, the rest {@link Source#TRADE_PRACTICE}. Valid for widths
 * of 2 to 15 ft; leave reserve for slopes and tall growth. Caution: {@link Caution#PTO_GUARDS},
 * {@link Caution#PTO_OFF_FIRST}.
 */
public enum ImplementPower {
    ROTARY_CUTTER("rotary-cutter", 4, 7, true, Source.CUTTER_POWER_TABLE),
    /** Rear or belly mower on lawn. */
    FINISH_MOWER("finish-mower", 4, 5, true, Source.TRADE_PRACTICE),
    FLAIL_MOWER("flail-mower", 6, 8, true, Source.TRADE_PRACTICE),
    ROTARY_TILLER("rotary-tiller", 5, 7, true, Source.TRADE_PRACTICE),
    SNOW_BLOWER("snow-blower", 5, 8, true, Source.TRADE_PRACTICE),
    ROTARY_BROOM("rotary-broom", 3, 5, true, Source.TRADE_PRACTICE),
    BOX_BLADE("box-blade", 5, 6, false, Source.TRADE_PRACTICE),
    LANDSCAPE_RAKE("landscape-rake", 3, 5, false, Source.TRADE_PRACTICE),
    REAR_BLADE("rear-blade", 4, 5, false, Source.TRADE_PRACTICE);

    /** Width of the tool, 2 to 15 ft. */
    public static final Bounds<Length> WIDTH = new Bounds<>("width", Length.ofFeet(2), Length.ofFeet(15));

    private final String id;
    private final double light;
    private final double heavy;
    private final boolean atPto;
    private final Source source;

    ImplementPower(String id, double light, double heavy, boolean atPto, Source source) {
        this.id = id;
        this.light = Power.ofHorsepower(light).si() / Length.ofFeet(1).si();
        this.heavy = Power.ofHorsepower(heavy).si() / Length.ofFeet(1).si();
        this.atPto = atPto;
        this.source = source;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Whether the power counts at the PTO; at the engine otherwise. */
    public boolean isAtPto() {
        return atPto;
    }

    /** Where the row comes from. */
    public Source source() {
        return source;
    }

    /**
     * Power for a width, light to heavy conditions.
     *
     * @throws OutOfRangeException outside {@link #WIDTH}
     */
    public Spread<Power> needed(Length width) {
        double w = WIDTH.check(width);
        return Spread.of(new Power(light * w), new Power(heavy * w));
    }

    /**
     * Widest tool that a power drives: the narrow end in heavy conditions, the wide end in light ones. May come out
     * wider or narrower than any tool.
     *
     * @throws OutOfRangeException outside {@link PtoPower#POWER}
     */
    public Spread<Length> widthDriven(Power power) {
        double watts = PtoPower.POWER.check(power);
        return Spread.of(new Length(watts / heavy), new Length(watts / light));
    }
}
