package fencerow.stock;

/** Where a machine is. */
public enum Availability {
    IN_STOCK("in-stock"),
    IN_TRANSIT("in-transit"),
    /** A configuration that can be ordered from the factory. */
    ORDERABLE("orderable");

    private final String id;

    Availability(String id) {
        this.id = id;
    }

    /** The word used in files and text keys. */
    public String id() {
        return id;
    }
}
