package fencerow.content;

import java.nio.file.Path;
import java.util.Optional;

/** The content as shipped, read once in a process; immutable. */
public final class ShippedContent {
    /** Where the shipped content is. */
    public static final Path FOLDER = Path.of("content");
    /** Where the demo showroom is. */
    public static final Path CONFIG = Path.of("kiosk-config");

    private ShippedContent() {}

    private static final class Read {
        static final Reading<Content> READING = new ContentReader().read(FOLDER, CONFIG, Optional.empty());
    }

    /** All of it. @throws AssertionError with all problems if it cannot be used */
    public static Content get() {
        return TinyContent.good(Read.READING);
    }

    /** A reader that reads everything but the shipped content anew; that is never changed by a test. */
    public static Reading<Content> read(Path content, Path config, Optional<Path> stock) {
        boolean shipped = content.equals(FOLDER) && config.equals(CONFIG) && stock.isEmpty();
        return shipped ? Read.READING : new ContentReader().read(content, config, stock);
    }
}
