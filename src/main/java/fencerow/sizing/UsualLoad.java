package fencerow.sizing;

import fencerow.terms.Length;
import fencerow.terms.Mass;
import fencerow.terms.Spread;

/**
 * Loads that shoppers ask about, with the depth that decides where their center lies on forks or a spear. Masses of
 * pallets: {@link Source#TRADE_PRACTICE}; bales by {@link RoundBale}; wood by {@link Firewood}.
 */
public enum UsualLoad {
    /** 450 to 500 square feet, dry to wet. */
    SOD_PALLET("sod-pallet", 1500, 3000, 48, Source.TRADE_PRACTICE),
    /** About 100 square feet of 60 mm pavers. */
    PAVER_PALLET("paver-pallet", 2500, 3300, 48, Source.TRADE_PRACTICE),
    /** 4 ft by 4 ft, 11.2 lb/ft3. */
    ROUND_BALE_4_BY_4("round-bale-4x4", 563, 563, 48, Source.BALE_WEIGHT),
    /** 5 ft by 5 ft. */
    ROUND_BALE_5_BY_5("round-bale-5x5", 1100, 1100, 60, Source.BALE_WEIGHT),
    /** A quarter cord of red oak, dry to green. */
    FIREWOOD_QUARTER_CORD("firewood-quarter-cord", 838, 1222, 48, Source.CORD_WEIGHTS);

    private final String id;
    private final Spread<Mass> mass;
    private final Length depth;
    private final Source source;

    UsualLoad(String id, double low, double high, double inches, Source source) {
        this.id = id;
        this.mass = Spread.of(Mass.ofPounds(low), Mass.ofPounds(high));
        this.depth = Length.ofInches(inches);
        this.source = source;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Mass, low to high. */
    public Spread<Mass> mass() {
        return mass;
    }

    /** Depth along the forks. */
    public Length depth() {
        return depth;
    }

    /** Center of the load ahead of the fork face: half its depth. */
    public Length center() {
        return new Length(depth.si() / 2);
    }

    /** Where the row comes from. */
    public Source source() {
        return source;
    }
}
