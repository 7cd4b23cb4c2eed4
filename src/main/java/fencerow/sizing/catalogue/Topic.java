package fencerow.sizing.catalogue;

/** What a calculation is about; the order is that of the screen. */
public enum Topic {
    WORK("work"),
    LOADER("loader"),
    BALANCE("balance"),
    TIRES("tires"),
    POWER("power"),
    HYDRAULICS("hydraulics"),
    HITCH("hitch"),
    HAULING("hauling"),
    SNOW("snow"),
    FIT("fit"),
    MONEY("money"),
    USED("used");

    private final String id;

    Topic(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
