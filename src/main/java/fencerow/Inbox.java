package fencerow;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.LinkOption;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.stream.Stream;

/**
 * The folder that other programs put stock lists into. What was taken in goes into its folder {@code done}, what was
 * not into {@code refused}, beside a text that says why. For any thread.
 */
final class Inbox {
    private static final System.Logger LOG = System.getLogger(Inbox.class.getName());
    private static final DateTimeFormatter STAMP =
            DateTimeFormatter.ofPattern("yyyy-MM-dd-HHmmss-", Locale.ROOT).withZone(ZoneOffset.UTC);
    private static final String WHY = ".txt";

    private final Path folder;
    private final Clock clock;
    private final Set<String> handled = new HashSet<>();
    private Map<Path, String> seen = Map.of();

    /** @param clock stamps the names of what was dealt with */
    Inbox(Path folder, Clock clock) {
        this.folder = folder;
        this.clock = clock;
    }

    /** Lists that have lain still since the last look, by their names. Each is found once, unless put there anew. */
    synchronized List<Path> findResting() {
        Map<Path, String> now = new TreeMap<>();
        try {
            Files.createDirectories(folder);
            try (Stream<Path> files = Files.list(folder)) {
                for (Path file : files.filter(Inbox::isList).toList()) {
                    now.put(file, file + " " + Files.size(file) + " " + Files.getLastModifiedTime(file));
                }
            }
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "The folder for stock lists cannot be read", e);
            return List.of();
        }
        List<Path> resting = now.entrySet().stream()
                .filter(file -> file.getValue().equals(seen.get(file.getKey())) && handled.add(file.getValue()))
                .map(Map.Entry::getKey)
                .toList();
        seen = now;
        return resting;
    }

    private static boolean isList(Path file) {
        String name = String.valueOf(file.getFileName()).toLowerCase(Locale.ROOT);
        return (name.endsWith(".csv") || name.endsWith(".xlsx")) && !name.startsWith(".")
                && Files.isRegularFile(file, LinkOption.NOFOLLOW_LINKS);
    }

    /** The list was taken in. */
    void done(Path list) {
        move(list, "done");
    }

    /** The list was not taken in. */
    void refused(Path list, List<String> why) {
        Path there = move(list, "refused");
        try {
            Files.write(there.resolveSibling(there.getFileName() + WHY), why);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "Why a stock list was refused cannot be written beside it", e);
        }
    }

    private Path move(Path list, String where) {
        Path there = folder.resolve(where).resolve(STAMP.format(clock.instant()) + list.getFileName());
        try {
            Files.createDirectories(folder.resolve(where));
            return Files.move(list, there);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "A stock list cannot be put aside; it is not looked at again", e);
            return list;
        }
    }

    /** What staff have to look after: lists that were refused and not taken away yet. */
    List<String> problems() {
        Path refused = folder.resolve("refused");
        if (!Files.isDirectory(refused)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(refused)) {
            return files.filter(file -> file.toString().endsWith(WHY))
                    .sorted()
                    .map(file -> file + ": this stock list was not taken in; the text says why. Mend the list, put it"
                            + " into " + folder + " again and delete this")
                    .toList();
        } catch (IOException e) {
            return List.of();
        }
    }
}
