package fencerow.content;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** One setting of {@code showroom.yaml}, read from its line alone: for what is wanted also while the file is broken. */
public final class ShowroomLine {
    private ShowroomLine() {}

    /**
     * The URL of the database that several kiosks share.
     *
     * @param config the folder of {@code showroom.yaml}
     * @return blank where the kiosk has a database of its own
     */
    public static String database(Path config) {
        return find(config, "database").orElse("");
    }

    /**
     * The folder that other programs put stock lists into.
     *
     * @param config the folder of {@code showroom.yaml}
     * @return as written; empty where there is none
     */
    public static Optional<String> stockInbox(Path config) {
        return find(config, "stock-inbox").filter(folder -> !folder.isBlank());
    }

    /** What stands in the line of a key at the left edge, without its quotes; empty where nothing does. */
    static Optional<String> find(Path config, String key) {
        Pattern pattern = Pattern.compile(
                "(?m)^" + Pattern.quote(key) + ":[ \\t]*[\"']?([^\"'#\\r\\n]*?)[\"']?[ \\t]*(#.*)?$");
        try {
            Matcher line = pattern.matcher(Files.readString(config.resolve("showroom.yaml")));
            return line.find() && !line.group(1).isBlank() ? Optional.of(line.group(1)) : Optional.empty();
        } catch (IOException e) {
            return Optional.empty();
        }
    }
}
