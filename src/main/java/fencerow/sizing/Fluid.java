package fencerow.sizing;

import fencerow.terms.Density;
import fencerow.terms.Temperature;

/**
 * Liquids poured into tires: what a gallon weighs and when it freezes.
 *
 * <p>Calcium chloride: 77 % flake per US gallon of water; between its slush and its solid point it is slush, which does
 * no harm standing and must not be driven on. 9.4 lb/gal, printed for a glycol mix, is the undiluted glycol.
 */
public enum Fluid {
    WATER("water", 8.34, 32, 32, Source.BALLAST_COMPARISONS),
    /** 2 lb of flake per gallon. */
    CALCIUM_CHLORIDE_2("calcium-chloride-2", 9.4, 14, -22, Source.TRACTOR_MANUALS_ON_FLUID),
    /** 3.5 lb of flake per gallon: 20 % heavier than water. */
    CALCIUM_CHLORIDE_3_5("calcium-chloride-3-5", 8.34 * 1.20, -11, -52, Source.LIQUID_WEIGHTING_ARTICLE),
    /** 5 lb of flake per gallon: 28 % heavier than water; near the strongest that helps against frost. */
    CALCIUM_CHLORIDE_5("calcium-chloride-5", 8.34 * 1.28, -52, -62, Source.LIQUID_WEIGHTING_ARTICLE),
    BEET_JUICE("beet-juice", 11.0, -35, -35, Source.BALLAST_COMPARISONS),
    /** Methanol mix. */
    WASHER_FLUID("washer-fluid", 7.7, -20, -20, Source.BALLAST_COMPARISONS),
    /** Half ethylene glycol by volume. */
    ETHYLENE_GLYCOL_50("ethylene-glycol-50", 8.95, -34, -34, Source.GLYCOL_TABLES),
    /** Half propylene glycol by volume. */
    PROPYLENE_GLYCOL_50("propylene-glycol-50", 8.7, -28, -28, Source.GLYCOL_TABLES);

    private final String id;
    private final Density density;
    private final Temperature slush;
    private final Temperature solid;
    private final Source source;

    Fluid(String id, double poundsPerGallon, double slush, double solid, Source source) {
        this.id = id;
        this.density = Density.ofPoundsPerGallon(poundsPerGallon);
        this.slush = Temperature.ofFahrenheit(slush);
        this.solid = Temperature.ofFahrenheit(solid);
        this.source = source;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** What a volume of it weighs. */
    public Density density() {
        return density;
    }

    /** Below this it is no longer free of slush. */
    public Temperature slushPoint() {
        return slush;
    }

    /** At and below this it is solid. */
    public Temperature solidPoint() {
        return solid;
    }

    /** Whether it stays free of slush down to {@code low}. */
    public boolean staysLiquidAt(Temperature low) {
        return low.si() >= slush.si();
    }

    /** Whether it is poisonous, which decides the caution. */
    public boolean isPoisonous() {
        return this == WASHER_FLUID || this == ETHYLENE_GLYCOL_50;
    }

    /** Whether it rusts rims, which decides the caution. */
    public boolean isCorrosive() {
        return this == CALCIUM_CHLORIDE_2 || this == CALCIUM_CHLORIDE_3_5 || this == CALCIUM_CHLORIDE_5;
    }

    /** Where the row comes from. */
    public Source source() {
        return source;
    }
}
