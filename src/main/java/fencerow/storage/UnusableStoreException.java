package fencerow.storage;

/** There is no database that could be used. The message says which folder or file, what is wrong and what to do. */
public final class UnusableStoreException extends Exception {
    UnusableStoreException(String message, Throwable cause) {
        super(message, cause);
    }

    UnusableStoreException(String message) {
        super(message);
    }
}
