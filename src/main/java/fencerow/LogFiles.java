package fencerow;

import fencerow.kiosk.frame.Failures;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.Locale;
import java.util.logging.FileHandler;
import java.util.logging.Formatter;
import java.util.logging.Handler;
import java.util.logging.Level;
import java.util.logging.LogRecord;
import java.util.logging.Logger;

/**
 * The kiosk's log: at most five files of a megabyte, the oldest overwritten. What is thrown is written down without
 * its message, which may hold what a shopper typed.
 */
final class LogFiles {
    private static final int MOST_BYTES = 1_000_000;
    private static final int MOST_FILES = 5;

    private LogFiles() {}

    /** Lets the log go into the folder as well as to standard error; where that cannot be, says so there. */
    static void open(Path folder, ZoneId zone) {
        Logger root = Logger.getLogger("");
        Formatter lines = new Lines(zone);
        for (Handler handler : root.getHandlers()) {
            handler.setFormatter(lines);
        }
        try {
            Files.createDirectories(folder);
            var file = new FileHandler(folder.resolve("fencerow.%g.log").toString(), MOST_BYTES, MOST_FILES, true);
            file.setEncoding("UTF-8");
            file.setFormatter(lines);
            root.addHandler(file);
        } catch (IOException e) {
            root.log(Level.WARNING, "No log can be kept in [" + folder + "]; make it a folder this user may write to");
        }
    }

    /** One line a record, and the places a failure came through. */
    static final class Lines extends Formatter {
        private static final DateTimeFormatter TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd HH:mm:ss", Locale.ROOT);
        private final ZoneId zone;

        Lines(ZoneId zone) {
            this.zone = zone;
        }

        @Override
        public String format(LogRecord line) {
            String thrown = line.getThrown() == null ? "" : "\n" + Failures.withoutWords(line.getThrown());
            return TIME.format(line.getInstant().atZone(zone)) + " "
                    + line.getLevel().getName() + " " + line.getLoggerName() + ": " + formatMessage(line) + thrown
                    + "\n";
        }
    }
}
