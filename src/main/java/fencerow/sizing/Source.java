package fencerow.sizing;

/**
 * Where a formula or a figure comes from. The citation is the publication's own title, alike in every language.
 */
public enum Source {
    FIELD_CAPACITY_BULLETIN("field-capacity-bulletin", Standing.PUBLISHED,
            "Estimating the Field Capacity of Farm Machines, AgDM A3-24 and PM 696, Iowa State University Extension"),
    FIELD_CAPACITY_CALCULATION("field-capacity-calculation", Standing.PUBLISHED,
            "Calculating Farm Machinery Field Capacities, AEN-73, University of Kentucky, 1991"),
    ROTARY_CUTTER_MANUAL("rotary-cutter-manual", Standing.PUBLISHED, "Rotary cutter operator's manual, 2005, p. 12"),
    MACHINERY_MANAGEMENT_DATA("machinery-management-data", Standing.FROM_MEMORY,
            "ASAE D497, Agricultural Machinery Management Data"),
    LIFT_RATING_PRACTICE("lift-rating-practice", Standing.FROM_MEMORY,
            "ASABE S301, front-end loader ratings, and ISO 789-2, rear three-point linkage lift"),
    BUCKET_RATING("bucket-rating", Standing.PUBLISHED,
            "AS ISO 7546:2021, Loader and front loading excavator buckets, volumetric ratings (preview)"),
    EARTH_MOVING_HANDBOOK("earth-moving-handbook", Standing.PUBLISHED,
            "Earth-moving performance handbook, edition 47, p. 23-285"),
    RECYCLING_DENSITIES("recycling-densities", Standing.PUBLISHED,
            "Calculations: pounds per cubic yard, California Department of Resources Recycling and Recovery"),
    STATE_CONVERSION_FACTORS("state-conversion-factors", Standing.PUBLISHED,
            "Conversion factors, Oregon Department of Environmental Quality, 2005"),
    REGULATION_WEIGHTS("regulation-weights", Standing.PUBLISHED,
            "Massachusetts recycling regulation weights, quoted at second hand, 2011"),
    SOIL_YARD_WEIGHTS("soil-yard-weights", Standing.PUBLISHED, "A soil yard's measured saturated weights"),
    CONTRACTOR_WEIGHTS("contractor-weights", Standing.PUBLISHED, "A contractor's list of material weights"),
    MANURE_PRODUCTION("manure-production", Standing.FROM_MEMORY, "ASAE D384, Manure Production and Characteristics"),
    BALE_WEIGHT("bale-weight", Standing.PUBLISHED, "Bale Weight, E-319, Texas A&M AgriLife Extension, January 2012"),
    CORD_WEIGHTS("cord-weights", Standing.PUBLISHED,
            "Cord weights, quoting a state energy office and an engineering table"),
    IMPLEMENT_MANUALS("implement-manuals", Standing.PUBLISHED,
            "Axle load and minimum ballast formulas printed alike in the operator's manuals of five implements"),
    SMALL_TRACTOR_MANUAL("small-tractor-manual", Standing.PUBLISHED, "Small tractor operator's manual, p. 125"),
    WEIGHT_SPLIT_BULLETIN("weight-split-bulletin", Standing.PUBLISHED,
            "AGEN 105 laboratory 7, weight split table from a university bulletin"),
    LEVER_STATICS("lever-statics", Standing.ARITHMETIC, "Plane statics of the tractor, level and standing"),
    TIRE_VOLUME_CHART("tire-volume-chart", Standing.PUBLISHED,
            "Tire fill chart, US gallons of water at 75 % fill; a retailer's page, within 8 % of operator's manuals"),
    TIRE_GEOMETRY("tire-geometry", Standing.ARITHMETIC,
            "Fill volume from overall, rim and section sizes, calibrated on twelve charted sizes, within 15 %"),
    TRACTOR_MANUALS_ON_FLUID("tractor-manuals-on-fluid", Standing.PUBLISHED,
            "Liquid ballast pages of four tractor operator's manuals"),
    LIQUID_WEIGHTING_ARTICLE("liquid-weighting-article", Standing.PUBLISHED,
            "Liquid weighting of tractor tires, a tire maker's article"),
    HIGHWAY_BRINE_STUDY("highway-brine-study", Standing.PUBLISHED,
            "FHWA-RD-95-202, appendix A, Federal Highway Administration, June 1996"),
    BALLAST_COMPARISONS("ballast-comparisons", Standing.PUBLISHED, "Comparisons of liquid ballast, farm press, 2025"),
    GLYCOL_TABLES("glycol-tables", Standing.FROM_MEMORY,
            "ASHRAE Handbook, Fundamentals: physical properties of glycols"),
    POWER_RATINGS_TEXTBOOK("power-ratings-textbook", Standing.PUBLISHED,
            "Converting tractor power ratings, an agricultural engineering textbook"),
    CUTTER_POWER_TABLE("cutter-power-table", Standing.PUBLISHED, "Brush cutter power by width, a buyer's guide"),
    PTO_TYPES("pto-types", Standing.PUBLISHED, "ISO 500-1:2014, Rear-mounted power take-off (preview and open tables)"),
    SNOW_BLOWER_MANUAL("snow-blower-manual", Standing.PUBLISHED, "Rear snow blower operator's manual, p. 4"),
    CHIPPER_SAFETY_MANUAL("chipper-safety-manual", Standing.PUBLISHED,
            "Chipper and Shredder safety manual, p. 16, Kansas State University"),
    CYLINDER_FORMULAS("cylinder-formulas", Standing.PUBLISHED,
            "Hydraulic cylinder calculations, a distributor's handbook, and Common hydraulic formulas, 2017"),
    FLUID_POWER_GUIDE("fluid-power-guide", Standing.PUBLISHED, "Fluid power guidelines, an engineering firm's page"),
    COUPLER_STANDARDS("coupler-standards", Standing.PUBLISHED,
            "ISO 5675:2021, ISO 7241 and ISO 16028:1999 (previews)"),
    HITCH_CATEGORIES("hitch-categories", Standing.PUBLISHED,
            "Three-point hitch categories, an open encyclopedia table"),
    HITCH_STANDARD("hitch-standard", Standing.FROM_MEMORY, "ISO 730, Rear-mounted three-point linkage"),
    HITCH_LIFT_TEST("hitch-lift-test", Standing.PUBLISHED,
            "ISO 789-2:2018, Rear three-point linkage lift capacity (scope)"),
    CARGO_SECUREMENT("cargo-securement", Standing.PUBLISHED,
            "49 CFR 393.106, 393.108 and 393.110, Protection Against Shifting and Falling Cargo"),
    HEAVY_EQUIPMENT_SECUREMENT("heavy-equipment-securement", Standing.FROM_MEMORY,
            "49 CFR 393.130, heavy vehicles, equipment and machinery"),
    TRAILER_HITCHES("trailer-hitches", Standing.PUBLISHED, "SAE J684 (July 2005) hitch classes, as tabulated"),
    VEHICLE_HANDBOOKS("vehicle-handbooks", Standing.PUBLISHED, "Trailer towing pages of two vehicle handbooks"),
    COMMERCIAL_LICENSE("commercial-license", Standing.PUBLISHED,
            "49 CFR 383.5 and 390.5 definitions, quoted in carriers' safety bulletins"),
    SNOW_GLOSSARY("snow-glossary", Standing.PUBLISHED,
            "Glossary of Meteorology, American Meteorological Society: snow density"),
    SNOW_COURSE("snow-course", Standing.PUBLISHED, "ATSC 113, University of British Columbia: snow"),
    SNOW_DENSITY_PAGE("snow-density-page", Standing.PUBLISHED, "Snow density, an encyclopedia page"),
    SNOW_PLOW_MANUAL("snow-plow-manual", Standing.PUBLISHED,
            "Snow plow operator's manual, p. 18, quoting the National Weather Service"),
    GEOMETRY("geometry", Standing.ARITHMETIC, "Plain geometry"),
    GARAGE_DOORS("garage-doors", Standing.PUBLISHED, "Standard garage door heights, an engineering page"),
    MACHINERY_COSTS_BULLETIN("machinery-costs-bulletin", Standing.PUBLISHED,
            "Estimating Farm Machinery Costs, AgDM A3-29, Iowa State University Extension"),
    TRACTOR_COSTS_BULLETIN("tractor-costs-bulletin", Standing.PUBLISHED,
            "Machinery Cost Estimates: Tractors, University of Illinois, May 2008"),
    COST_EQUATIONS("cost-equations", Standing.PUBLISHED,
            "Machinery cost equations, a sheet based on ASAE standards, 2000"),
    TRACTOR_COSTS_ARTICLE("tractor-costs-article", Standing.PUBLISHED,
            "How much will that tractor cost, part 2, trade press on Iowa State figures"),
    LOAN_FORMULA("loan-formula", Standing.ARITHMETIC, "Level payment of an annuity"),
    HEARING_LIMITS("hearing-limits", Standing.PUBLISHED,
            "OSHA 29 CFR 1910.95 and NIOSH exposure limits and exchange rates, as restated in textbooks"),
    CHARGING_CHECKS("charging-checks", Standing.PUBLISHED,
            "Charging system checks: farm press and two engine manuals"),
    SERVICE_MANUAL_DRIFT("service-manual-drift", Standing.PUBLISHED,
            "Lift cylinder drift limits: service manuals of nearby machines and TM 5-3805-280-24-1, US Army, 1997"),
    TREAD_GUIDES("tread-guides", Standing.PUBLISHED, "Tractor tire tread guides, quoting a tire maker's engineer"),
    TRADE_PRACTICE("trade-practice", Standing.COMMON_PRACTICE, "Common practice, no source");

    private final String id;
    private final Standing standing;
    private final String citation;

    Source(String id, Standing standing, String citation) {
        this.id = id;
        this.standing = standing;
        this.citation = citation;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** How far the source can be leaned on. */
    public Standing standing() {
        return standing;
    }

    /** The publication, by its own title. */
    public String citation() {
        return citation;
    }
}
