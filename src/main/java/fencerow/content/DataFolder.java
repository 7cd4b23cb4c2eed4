package fencerow.content;

import java.nio.file.InvalidPathException;
import java.nio.file.Path;

/**
 * Where the kiosk keeps what it must not lose. Read from its line in {@code showroom.yaml} alone: the last good content
 * lies there, which is wanted just when that file is broken.
 */
public final class DataFolder {
    /** Where it is when nothing is said. */
    public static final String USUAL = ".fencerow";

    private DataFolder() {}

    /**
     * The folder that {@code data-folder} names, from the user's home unless it is given from the root.
     *
     * @param config the folder of {@code showroom.yaml}
     * @param home   the user's
     */
    public static Path of(Path config, Path home) {
        try {
            return home.resolve(ShowroomLine.find(config, "data-folder").orElse(USUAL));
        } catch (InvalidPathException e) {
            return home.resolve(USUAL);
        }
    }
}
