package fencerow.terms;

/** The numbers of a model's data sheet that work, hauling and fitting depend on. */
public enum Figure {
    ENGINE_POWER("engine-power", Dimension.POWER),
    /** At the rear shaft, as published. */
    PTO_POWER("pto-power", Dimension.POWER),
    /** Bare tractor without loader, fluid or attachments; driver not counted. */
    TRACTOR_MASS("tractor-mass", Dimension.MASS),
    /** Of the bare tractor, on the front axle. */
    FRONT_AXLE_MASS("front-axle-mass", Dimension.MASS),
    /** Of the bare tractor, on the rear axle. */
    REAR_AXLE_MASS("rear-axle-mass", Dimension.MASS),
    WHEELBASE("wheelbase", Dimension.LENGTH),
    LENGTH("length", Dimension.LENGTH),
    /** Outside of the rear tires at the setting the model ships with. */
    TIRE_WIDTH("tire-width", Dimension.LENGTH),
    /** Roll bar up, or cab roof. */
    HEIGHT("height", Dimension.LENGTH),
    /** Roll bar folded; as {@link #HEIGHT} where it does not fold. */
    HEIGHT_FOLDED("height-folded", Dimension.LENGTH),
    LOADER_MASS("loader-mass", Dimension.MASS),
    /** Loader lift to full height at the bucket pins. */
    LOADER_LIFT_PINS("loader-lift-pins", Dimension.MASS),
    /** Loader lift to full height 500 mm ahead of the pins. */
    LOADER_LIFT("loader-lift", Dimension.MASS),
    LOADER_HEIGHT("loader-height", Dimension.LENGTH),
    /** Hitch lift at the lower link ends. */
    HITCH_LIFT_ENDS("hitch-lift-ends", Dimension.MASS),
    /** Hitch lift 610 mm (24 in) behind the link ends. */
    HITCH_LIFT("hitch-lift", Dimension.MASS),
    /** Flow at the remotes and the loader, steering not counted. */
    HYDRAULIC_FLOW("hydraulic-flow", Dimension.FLOW),
    HYDRAULIC_PRESSURE("hydraulic-pressure", Dimension.PRESSURE),
    /** Rear axle to the lower link ends. */
    HITCH_OVERHANG("hitch-overhang", Dimension.LENGTH),
    /** Front axle to the loader's bucket pins, arms level. */
    LOADER_REACH("loader-reach", Dimension.LENGTH);

    private final String id;
    private final Dimension dimension;

    Figure(String id, Dimension dimension) {
        this.id = id;
        this.dimension = dimension;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }

    /** What the figure measures. */
    public Dimension dimension() {
        return dimension;
    }
}
