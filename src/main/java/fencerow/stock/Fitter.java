package fencerow.stock;

/** Who can fit an add-on. */
public enum Fitter {
    /** Only the factory, when the tractor is ordered. */
    FACTORY("factory"),
    /** A dealer of the tractor's own brand. */
    BRAND_DEALER("brand-dealer"),
    /** Any good shop. */
    ANY_SHOP("any-shop"),
    /** A handy owner. */
    OWNER("owner");

    private final String id;

    Fitter(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
