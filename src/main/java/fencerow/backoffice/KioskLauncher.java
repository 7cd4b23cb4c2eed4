package fencerow.backoffice;

/** Opens the kiosk; given to the command line by the root, because this part may not know the kiosk. */
@FunctionalInterface
public interface KioskLauncher {
    /**
     * Runs the kiosk until it is closed.
     *
     * @return the exit code
     */
    int launch(Folders folders);
}
