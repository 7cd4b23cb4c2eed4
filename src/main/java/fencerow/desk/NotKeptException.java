package fencerow.desk;

/**
 * The database could not do its work: the disk is full, the folder may not be written, another program holds it, the
 * server is away.
 */
public final class NotKeptException extends RuntimeException {
    /** Why. */
    public enum Cause {
        DISK_FULL("disk-full"),
        READ_ONLY("read-only"),
        BUSY("busy"),
        DAMAGED("damaged"),
        /** The server does not answer, or does not let us in. */
        AWAY("away"),
        OTHER("other");

        private final String id;

        Cause(String id) {
            this.id = id;
        }

        /** The word used in text keys. */
        public String id() {
            return id;
        }
    }

    private final Cause why;

    /**
     * Makes one.
     *
     * @param message what is wrong and what to do
     * @param cause   as the database says it
     */
    public NotKeptException(Cause why, String message, Throwable cause) {
        super(message, cause);
        this.why = why;
    }

    /**
     * Makes one without a cause, where that could quote what must stay secret.
     *
     * @param message what is wrong and what to do
     */
    public NotKeptException(Cause why, String message) {
        super(message);
        this.why = why;
    }

    /** Why. */
    public Cause why() {
        return why;
    }
}
