package fencerow.backoffice;

import java.nio.file.Path;
import java.util.Optional;

/**
 * Where the showroom's files are, and how they are to be used.
 *
 * @param content  folder of what is true of the trade
 * @param config   folder of what the showroom sets
 * @param stock    a stock list to use instead of the configuration's
 * @param language to start in, as a BCP 47 tag; empty for the showroom's first
 */
public record Folders(Path content, Path config, Optional<Path> stock, Optional<String> language) {
    /** The folders as they are shipped. */
    public static Folders below(Path home) {
        return new Folders(home.resolve("content"), home.resolve("kiosk-config"), Optional.empty(), Optional.empty());
    }
}
