package fencerow.storage;

import fencerow.desk.NotKeptException;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.channels.FileChannel;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;

/**
 * Copies of the database, one a day at most, the newest seven kept. They are numbered: the number says which is newer,
 * whatever the clock said when they were made.
 */
final class Backups {
    private static final int KEPT = 7;
    private static final Pattern NAME = Pattern.compile("backup-(\\d{1,9})-(\\d{4}-\\d{2}-\\d{2})\\.db");

    private final Path folder;

    /** @param folder created when first needed */
    Backups(Path folder) {
        this.folder = folder;
    }

    /** One copy. */
    record Backup(Path file, long number, String day) {}

    /**
     * Makes a copy unless there is one of the day. It gets its name when it lies on the disk.
     *
     * @throws IOException      if the files cannot be written
     * @throws NotKeptException likewise
     */
    void make(DatabaseFile database, Instant now) throws IOException {
        List<Backup> all = all();
        String day = now.atOffset(ZoneOffset.UTC).toLocalDate().toString();
        if (!all.isEmpty() && all.get(0).day().equals(day)) {
            return;
        }
        Files.createDirectories(folder);
        Path unfinished = folder.resolve("unfinished.db");
        Files.deleteIfExists(unfinished);
        try {
            database.copyTo(unfinished);
            force(unfinished);
            long number = all.isEmpty() ? 1 : all.get(0).number() + 1;
            Files.move(unfinished, folder.resolve("backup-" + number + "-" + day + ".db"),
                    StandardCopyOption.ATOMIC_MOVE);
        } finally {
            // Half a copy would only take the room that the database needs.
            Files.deleteIfExists(unfinished);
        }
        for (Backup old : all.subList(Math.min(all.size(), KEPT - 1), all.size())) {
            Files.delete(old.file());
        }
    }

    /** Lays a copy of the newest whole one beside them, to take the database's place. @return which, if there is one */
    Optional<Backup> prepare() throws IOException {
        for (Backup backup : all()) {
            Files.copy(backup.file(), prepared(), StandardCopyOption.REPLACE_EXISTING);
            if (new DatabaseFile(prepared()).isWhole()) {
                force(prepared());
                return Optional.of(backup);
            }
            Files.delete(prepared());
        }
        return Optional.empty();
    }

    /** What {@link #prepare} laid there. */
    Path prepared() {
        return folder.resolve("restored.db");
    }

    /** All copies, newest first. */
    List<Backup> all() throws IOException {
        if (!Files.isDirectory(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.flatMap(file -> backup(file).stream())
                    .sorted(Comparator.comparingLong(Backup::number).reversed())
                    .toList();
        } catch (UncheckedIOException e) {
            throw e.getCause();
        }
    }

    private static Optional<Backup> backup(Path file) {
        Matcher name = NAME.matcher(String.valueOf(file.getFileName()));
        return name.matches()
                ? Optional.of(new Backup(file, Long.parseLong(name.group(1)), name.group(2)))
                : Optional.empty();
    }

    private static void force(Path file) throws IOException {
        try (FileChannel written = FileChannel.open(file, StandardOpenOption.WRITE)) {
            written.force(true);
        }
    }
}
