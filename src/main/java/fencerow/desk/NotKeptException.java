package fencerow.desk;

/** The database could not do its work: the disk is full, the folder may not be written, another program holds it. */
public final class NotKeptException extends RuntimeException {
    /** Why. */
    public enum Cause {
        DISK_FULL("disk-full"),
        READ_ONLY("read-only"),
        BUSY("busy"),
        DAMAGED("damaged"),
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

    /** Why. */
    public Cause why() {
        return why;
    }
}
