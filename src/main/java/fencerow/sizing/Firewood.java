package fencerow.sizing;

import fencerow.terms.Mass;
import fencerow.terms.Spread;

/** Mass of a cord (128 cubic feet stacked) of firewood, dry and green. Source: {@link Source#CORD_WEIGHTS}. */
public enum Firewood {
    RED_OAK("red-oak", 3350, 3350, 4886, 4886),
    SOFT_MAPLE("soft-maple", 2640, 2640, 3950, 3950),
    ALDER("alder", 2218, 2218, 3640, 3640),
    ASPEN("aspen", 1860, 2400, 3020, 3880),
    ASH("ash", 2680, 3450, 4630, 5460);

    private final String id;
    private final Spread<Mass> dry;
    private final Spread<Mass> green;

    Firewood(String id, double dryLow, double dryHigh, double greenLow, double greenHigh) {
        this.id = id;
        this.dry = Spread.of(Mass.ofPounds(dryLow), Mass.ofPounds(dryHigh));
        this.green = Spread.of(Mass.ofPounds(greenLow), Mass.ofPounds(greenHigh));
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** A dry cord. */
    public Spread<Mass> dryCord() {
        return dry;
    }

    /** A green cord. */
    public Spread<Mass> greenCord() {
        return green;
    }
}
