package fencerow.backoffice;

/** What was typed cannot be meant. The message says what is wrong and what to do. */
final class WrongUseException extends Exception {
    WrongUseException(String message) {
        super(message);
    }
}
