package fencerow.sizing;

import fencerow.terms.Ratio;
import fencerow.terms.Spread;

/**
 * Share of the engine's gross power that reaches the PTO, by transmission. Source: {@link Source#TRADE_PRACTICE}; the
 * textbook's single share is {@link PtoPower#TEXTBOOK_SHARE}.
 */
public enum Transmission {
    /** Gear or shuttle. */
    GEAR("gear", 83, 90),
    HYDROSTATIC("hydrostatic", 75, 85);

    private final String id;
    private final Spread<Ratio> ptoShare;

    Transmission(String id, double low, double high) {
        this.id = id;
        this.ptoShare = Spread.of(Ratio.ofPercent(low), Ratio.ofPercent(high));
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Share of the engine's power, low to high. */
    public Spread<Ratio> ptoShare() {
        return ptoShare;
    }
}
