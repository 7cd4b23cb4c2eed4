package fencerow.backoffice;

/** A file that a command makes cannot be written. The message says which, why and what to do. */
final class UnwritableException extends Exception {
    UnwritableException(String message) {
        super(message);
    }
}
