package fencerow.sizing;

import fencerow.terms.Density;

/**
 * What snow weighs, as a share of water. Source: average {@link Source#SNOW_PLOW_MANUAL}; others
 * {@link Source#SNOW_GLOSSARY}, {@link Source#SNOW_DENSITY_PAGE}, {@link Source#SNOW_COURSE}.
 */
public enum SnowDensity {
    NEW_DRY("new-dry", Density.ofPoundsPerCubicFoot(3.1), Source.SNOW_GLOSSARY),
    FRESH_AVERAGE("fresh-average", Density.ofPoundsPerCubicFoot(6.2), Source.SNOW_PLOW_MANUAL),
    SETTLED("settled", Density.ofPoundsPerCubicFoot(18.7), Source.SNOW_DENSITY_PAGE),
    HEAVY_WET("heavy-wet", Density.ofPoundsPerCubicFoot(24.8), Source.SNOW_DENSITY_PAGE);

    private final String id;
    private final Density density;
    private final Source source;

    SnowDensity(String id, Density density, Source source) {
        this.id = id;
        this.density = density;
        this.source = source;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Mass in a volume. */
    public Density density() {
        return density;
    }

    /** Where the row comes from. */
    public Source source() {
        return source;
    }
}
