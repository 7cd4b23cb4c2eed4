package fencerow.terms;

/** Stops of a walk around a tractor, in the order a person comes to them. Lists are always in this order. */
public enum Stop {
    FRONT("front"),
    LOADER("loader"),
    ENGINE_BAY("engine-bay"),
    OPERATOR_STATION("operator-station"),
    UNDERSIDE("underside"),
    HYDRAULICS("hydraulics"),
    REAR("rear"),
    TIRES("tires"),
    PAPERS("papers");

    private final String id;

    Stop(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
