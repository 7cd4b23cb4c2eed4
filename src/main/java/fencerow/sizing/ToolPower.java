package fencerow.sizing;

import fencerow.terms.Power;
import fencerow.terms.Spread;

/**
 * Power that tools without a working width ask for, by their size. Source: {@link Source#TRADE_PRACTICE}; soil and wood
 * decide. Caution: {@link Caution#PTO_GUARDS}, {@link Caution#PTO_OFF_FIRST}, {@link Caution#DIG_SAFELY}.
 */
public enum ToolPower {
    WOOD_CHIPPER_4_IN("wood-chipper-4-in", 15, 25),
    WOOD_CHIPPER_6_IN("wood-chipper-6-in", 20, 45),
    POST_HOLE_DIGGER_9_IN("post-hole-digger-9-in", 15, 25),
    POST_HOLE_DIGGER_12_IN("post-hole-digger-12-in", 20, 35);

    private final String id;
    private final Spread<Power> needed;

    ToolPower(String id, double low, double high) {
        this.id = id;
        this.needed = Spread.of(Power.ofHorsepower(low), Power.ofHorsepower(high));
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Power at the PTO, light to heavy. */
    public Spread<Power> needed() {
        return needed;
    }
}
