package fencerow.sizing;

import fencerow.terms.Ratio;
import fencerow.terms.Spread;

/**
 * Share of its price that an add-on returns when the tractor is sold. Source: {@link Source#TRADE_PRACTICE}. Caution:
 * {@link Caution#ESTIMATE_NOT_APPRAISAL}.
 */
public enum ResaleReturn {
    QUICK_ATTACH("quick-attach", 60, 100),
    REMOTES_OR_THIRD_FUNCTION("remotes-or-third-function", 30, 60),
    CAB("cab", 50, 70),
    MOWER_DECK("mower-deck", 30, 50),
    IRON_WEIGHTS("iron-weights", 60, 90),
    TIRE_FLUID("tire-fluid", 0, 50);

    private final String id;
    private final Spread<Ratio> share;

    ResaleReturn(String id, double low, double high) {
        this.id = id;
        this.share = Spread.of(Ratio.ofPercent(low), Ratio.ofPercent(high));
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Share of the price, low to high. */
    public Spread<Ratio> share() {
        return share;
    }
}
