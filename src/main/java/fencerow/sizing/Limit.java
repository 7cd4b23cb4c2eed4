package fencerow.sizing;

/** The rule that decided a result. */
public enum Limit {
    /** The hydraulic lift rules. */
    HYDRAULICS("hydraulics"),
    /** Half of the load that lifts the rear wheels rules. */
    TIPPING("tipping"),
    /** The rear axle must keep 45 % of the tractor's unladen weight. */
    REAR_AXLE_SHARE("rear-axle-share"),
    /** The steering axle must keep 20 %. */
    STEERING_SHARE("steering-share"),
    /** The rule is met without ballast. */
    NO_BALLAST_NEEDED("no-ballast-needed"),
    /** The 75 % fill limit rules. */
    FILL_LIMIT("fill-limit"),
    /** The published PTO power was used. */
    PUBLISHED_POWER("published-power"),
    /** The PTO power was taken as a share of the engine power. */
    POWER_SHARE("power-share"),
    /** The power at the shaft rules. */
    AVAILABLE_POWER("available-power"),
    /** The flow rules. */
    AVAILABLE_FLOW("available-flow"),
    /** The pressure rules. */
    AVAILABLE_PRESSURE("available-pressure"),
    /** Tools used together rule the number of circuits. */
    CIRCUITS_AT_ONCE("circuits-at-once"),
    /** The single most demanding tool rules the number of circuits. */
    LARGEST_TOOL("largest-tool"),
    /** The power band decides the category. */
    HITCH_POWER_BAND("hitch-power-band"),
    /** The trailer rating rules. */
    TRAILER_RATING("trailer-rating"),
    /** The tow vehicle rating rules. */
    TOW_VEHICLE_RATING("tow-vehicle-rating"),
    /** The combined rating rules. */
    COMBINATION_RATING("combination-rating"),
    /** The hitch rating rules. */
    HITCH_RATING("hitch-rating"),
    /** The length of the load decides the number of tie-downs. */
    CARGO_LENGTH("cargo-length"),
    /** The rule for machinery of 10,000 lb and more decides. */
    HEAVY_EQUIPMENT("heavy-equipment"),
    /** The working load limits decide the number of tie-downs. */
    WORKING_LOAD("working-load"),
    /** The height rules. */
    HEIGHT("height"),
    /** The width rules. */
    WIDTH("width"),
    /** The path must be wider than the wheels. */
    WHEEL_TRACK("wheel-track"),
    /** The hours since the last service decide. */
    SERVICE_HOURS("service-hours");

    private final String id;

    Limit(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
