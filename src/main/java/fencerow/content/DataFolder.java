package fencerow.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * Where the kiosk keeps what it must not lose. Read from its line in {@code showroom.yaml} alone: the last good content
 * lies there, which is wanted just when that file is broken.
 */
public final class DataFolder {
    /** Where it is when nothing is said. */
    public static final String USUAL = ".fencerow";

    private static final Pattern LINE = Pattern.compile(
            "(?m)^data-folder:[ \\t]*[\"']?([^\"'#\\r\\n]*?)[\"']?[ \\t]*(#.*)?$");

    private DataFolder() {}

    /**
     * The folder that {@code data-folder} names, from the user's home unless it is given from the root.
     *
     * @param config the folder of {@code showroom.yaml}
     * @param home   the user's
     */
    public static Path of(Path config, Path home) {
        try {
            Matcher line = LINE.matcher(Files.readString(config.resolve("showroom.yaml")));
            return home.resolve(line.find() && !line.group(1).isBlank() ? line.group(1) : USUAL);
        } catch (IOException | InvalidPathException e) {
            return home.resolve(USUAL);
        }
    }
}
