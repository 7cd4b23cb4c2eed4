package fencerow.backoffice;

import fencerow.content.Content;
import fencerow.content.Reading;
import java.nio.file.Path;
import java.util.Optional;

/** Where commands get content and configuration from: files, through a {@link fencerow.content.ContentReader}. */
@FunctionalInterface
public interface ContentSource {
    /**
     * What the folders hold.
     *
     * @param stock a stock list to take in place of the configuration's
     */
    Reading<Content> read(Path content, Path config, Optional<Path> stock);
}
