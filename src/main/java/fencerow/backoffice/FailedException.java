package fencerow.backoffice;

/** A command could not do its work. The message says which file, what is wrong and what to do. */
final class FailedException extends Exception {
    FailedException(String message) {
        super(message);
    }
}
