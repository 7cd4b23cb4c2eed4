package fencerow.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.nio.file.attribute.FileTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * A copy of the content and configuration that were last read without a problem, so that a kiosk can go on showing
 * them when newer ones are broken. One process at a time.
 *
 * <p>Each copy has a folder of its own named by the content's version. It gets that name only when it lies on the disk
 * and has been read back, so that a power cut at any moment leaves a whole copy, or the one before.
 */
public final class LastGoodContent {
    private static final String START = "good-";
    private static final String UNFINISHED = "unfinished-";
    private static final String CONTENT = "content";
    private static final String CONFIG = "kiosk-config";
    private static final Pattern PHOTOGRAPH = Pattern.compile(".*\\.(png|jpg|jpeg)");
    private static final String STOCK = "stock.csv";

    private final Path folder;

    /**
     * Keeps copies in a folder.
     *
     * @param folder created when first needed
     */
    public LastGoodContent(Path folder) {
        this.folder = folder;
    }

    /**
     * A copy that can be used.
     *
     * @param content what was read from it
     * @param config  its configuration, for whatever is read from there besides
     */
    public record Kept(Content content, Path config) {}

    /**
     * Keeps what was read; does nothing where it is kept already. Older copies are deleted.
     *
     * @param content what was read
     * @param from    the content's folder
     * @param config  the configuration's folder
     * @param stock   the stock list that was taken in place of the configuration's
     * @throws IOException if it cannot be kept, or was changed meanwhile; earlier copies are then still there
     */
    public void keep(Content content, Path from, Path config, Optional<Path> stock) throws IOException {
        Path copy = folder.resolve(START + content.version());
        if (!Files.isDirectory(copy)) {
            Path unfinished = folder.resolve(UNFINISHED + content.version());
            delete(unfinished);
            copy(from, unfinished.resolve(CONTENT));
            copy(config, unfinished.resolve(CONFIG));
            if (stock.isPresent()) {
                copyFile(stock.get(), unfinished.resolve(STOCK));
            }
            // The version is of all texts: where it is the same, the copy reads as what it is a copy of.
            if (!version(unfinished).equals(content.version())) {
                delete(unfinished);
                throw new IOException("the files changed while they were copied; start again when they are at rest");
            }
            Files.move(unfinished, copy);
        }
        for (Path other : copies(START)) {
            if (!other.equals(copy)) {
                delete(other);
            }
        }
        for (Path other : copies(UNFINISHED)) {
            delete(other);
        }
    }

    /** The newest copy that can be used. */
    public Optional<Kept> find() {
        try {
            return copies(START).stream()
                    .sorted(Comparator.comparing(LastGoodContent::time).reversed())
                    .flatMap(copy -> read(copy).stream())
                    .findFirst();
        } catch (IOException e) {
            return Optional.empty();
        }
    }

    private static Optional<Kept> read(Path copy) {
        Path config = copy.resolve(CONFIG);
        Reading<Content> reading = new ContentReader().read(copy.resolve(CONTENT), config, stock(copy));
        return reading instanceof Reading.Good<Content> good
                ? Optional.of(new Kept(good.content(), config))
                : Optional.empty();
    }

    private static String version(Path copy) {
        return ContentReader.version(copy.resolve(CONTENT), copy.resolve(CONFIG), stock(copy));
    }

    private static Optional<Path> stock(Path copy) {
        return Optional.of(copy.resolve(STOCK)).filter(Files::isRegularFile);
    }

    private static FileTime time(Path copy) {
        try {
            return Files.getLastModifiedTime(copy);
        } catch (IOException e) {
            return FileTime.fromMillis(0);
        }
    }

    private List<Path> copies(String start) throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(each -> String.valueOf(each.getFileName()).startsWith(start))
                    .filter(Files::isDirectory)
                    .sorted()
                    .toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    /** Copies every file of a folder but hidden ones. */
    private static void copy(Path from, Path to) throws IOException {
        for (Path file : files(from)) {
            copyFile(file, to.resolve(from.relativize(file).toString()));
        }
    }

    private static List<Path> files(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            return all.filter(Files::isRegularFile)
                    .filter(file -> !String.valueOf(file.getFileName()).startsWith("."))
                    // Photographs are large, and the content does not become broken by one.
                    .filter(file -> !PHOTOGRAPH.matcher(String.valueOf(file.getFileName())).matches())
                    .toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static void copyFile(Path from, Path to) throws IOException {
        Files.createDirectories(to.getParent());
        Files.copy(from, to);
        try (FileChannel written = FileChannel.open(to, StandardOpenOption.WRITE)) {
            written.force(true);
        }
    }

    private static void delete(Path folder) throws IOException {
        if (Files.exists(folder)) {
            try (Stream<Path> all = Files.walk(folder)) {
                for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                    Files.delete(each);
                }
            } catch (UncheckedIOException e) {
                throw e.getCause();
            }
        }
    }
}
