package fencerow.sizing;

import fencerow.terms.Density;
import fencerow.terms.Spread;

/** Bulk densities of what goes into a bucket, in pounds per cubic yard. */
public enum Material {
    EARTH_LOOSE_DRY("earth-loose-dry", 2100, Source.RECYCLING_DENSITIES),
    /** Loose dry earth and 30 %. */
    EARTH_COMPACTED("earth-compacted", 2730, Source.RECYCLING_DENSITIES),
    EARTH_WET("earth-wet", 3000, Source.RECYCLING_DENSITIES),
    TOPSOIL_SATURATED("topsoil-saturated", 1836, 2228, Source.SOIL_YARD_WEIGHTS),
    GRAVEL_DRY("gravel-dry", 2600, Source.RECYCLING_DENSITIES),
    /** Dry gravel and 20 %. */
    GRAVEL_WET("gravel-wet", 3120, Source.RECYCLING_DENSITIES),
    SAND_DRY("sand-dry", 2400, Source.RECYCLING_DENSITIES),
    /** Dry sand and 20 %. */
    SAND_DAMP("sand-damp", 2880, Source.RECYCLING_DENSITIES),
    /** Dry sand and 30 %. */
    SAND_WET("sand-wet", 3120, Source.RECYCLING_DENSITIES),
    /** Up to 8 in, loose. */
    STONE("stone", 2700, Source.RECYCLING_DENSITIES),
    BROKEN_CONCRETE("broken-concrete", 2400, Source.RECYCLING_DENSITIES),
    CONCRETE_SOLID("concrete-solid", 4050, Source.CONTRACTOR_WEIGHTS),
    /** Wood or bark, saturated. */
    MULCH_WET("mulch-wet", 628, 636, Source.SOIL_YARD_WEIGHTS),
    WOOD_CHIPS_DRY("wood-chips-dry", 243, Source.STATE_CONVERSION_FACTORS),
    WOOD_CHIPS_GREEN("wood-chips-green", 473, Source.STATE_CONVERSION_FACTORS),
    WOOD_SHREDDED_DRY("wood-shredded-dry", 300, Source.RECYCLING_DENSITIES),
    COMPOST_FINISHED("compost-finished", 1350, Source.REGULATION_WEIGHTS),
    COMPOST_UNFINISHED("compost-unfinished", 1500, Source.REGULATION_WEIGHTS),
    COMPOST_SATURATED("compost-saturated", 1724, Source.SOIL_YARD_WEIGHTS),
    LEAVES_LOOSE("leaves-loose", 250, 500, Source.STATE_CONVERSION_FACTORS),
    BRUSH_LOOSE("brush-loose", 250, 600, Source.RECYCLING_DENSITIES),
    MANURE_FRESH("manure-fresh", 1650, 1700, Source.MANURE_PRODUCTION),
    MANURE_BEDDED("manure-bedded", 800, 1300, Source.MANURE_PRODUCTION);

    private final String id;
    private final Spread<Density> density;
    private final Source source;

    Material(String id, double poundsPerCubicYard, Source source) {
        this(id, poundsPerCubicYard, poundsPerCubicYard, source);
    }

    Material(String id, double low, double high, Source source) {
        this.id = id;
        this.density = Spread.of(Density.ofPoundsPerCubicYard(low), Density.ofPoundsPerCubicYard(high));
        this.source = source;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** Bulk density, low to high. */
    public Spread<Density> density() {
        return density;
    }

    /** Where the row comes from. */
    public Source source() {
        return source;
    }
}
