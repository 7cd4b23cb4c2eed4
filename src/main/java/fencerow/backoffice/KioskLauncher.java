package fencerow.backoffice;

/** Opens the kiosk; given to the command line by the root, because this part may not know the kiosk. */
@FunctionalInterface
public interface KioskLauncher {
    /**
     * Runs the kiosk until it is closed.
     *
     * @return the exit code
     * @throws IllegalArgumentException if a setting of the window makes no sense
     * @throws NoScreenException        if there is nothing to show it on
     */
    int launch(Folders folders) throws NoScreenException;

    /** There is no screen that a kiosk can be shown on. The message says why and what to do. */
    final class NoScreenException extends Exception {
        /**
         * Makes one.
         *
         * @param message what is wrong; what to do
         */
        public NoScreenException(String message) {
            super(message);
        }
    }
}
