package fencerow.storage;

import fencerow.desk.NotKeptException;
import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.nio.file.StandardOpenOption;
import java.sql.SQLException;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.flywaydb.core.api.FlywayException;

/** How the database's file is opened: mended where it must be, brought up to date, backed up. */
final class FileOpening {
    private static final System.Logger LOG = System.getLogger(FileOpening.class.getName());

    private FileOpening() {}

    static Store open(Path folder, Clock clock) throws UnusableStoreException {
        var file = new DatabaseFile(folder.resolve(Store.FILE));
        List<String> notices = new ArrayList<>();
        try {
            Files.createDirectories(folder);
            // One program at a time looks at the file, mends it and changes its tables.
            try (FileChannel gate = FileChannel.open(
                            folder.resolve("opening.lock"), StandardOpenOption.CREATE, StandardOpenOption.WRITE);
                    FileLock held = gate.lock()) {
                LOG.log(System.Logger.Level.DEBUG, "opening {0} under {1}", file.path(), held);
                var backups = new Backups(folder.resolve("backups"));
                finishMending(file, backups);
                if (!file.isWhole()) {
                    notices.add(mend(file, backups));
                }
                Migrations.run(file);
                backUp(file, backups, clock).ifPresent(notices::add);
            }
            // As long as one connection is open, the others are cheap to open and close.
            return Store.of(file, file.connect(), notices, clock);
        } catch (IOException e) {
            throw new UnusableStoreException("the data folder " + folder + " cannot be used ("
                    + e.getClass().getSimpleName() + "); let this user write there, or name another folder", e);
        } catch (SQLException e) {
            throw new UnusableStoreException(String.valueOf(file.failure(e).getMessage()), e);
        } catch (NotKeptException e) {
            throw new UnusableStoreException(String.valueOf(e.getMessage()), e);
        } catch (FlywayException e) {
            String first = String.valueOf(e.getMessage()).lines().findFirst().orElse("");
            throw new UnusableStoreException(file.path() + ": its tables cannot be brought up to date (" + first
                    + "); check that it was not written by a newer version, then start again", e);
        }
    }

    /**
     * Puts the damaged file aside and the newest whole backup in its place. The backup lies ready before anything is
     * moved, so that neither a full disk nor a power cut leaves an empty database.
     */
    private static String mend(DatabaseFile file, Backups backups) throws IOException {
        Optional<Backups.Backup> backup = backups.prepare();
        Path damaged = aside(file.path());
        move(file.path(), damaged);
        if (backup.isPresent()) {
            Files.move(backups.prepared(), file.path(), StandardCopyOption.ATOMIC_MOVE);
        }
        return file.path() + ": the database was damaged and is kept as " + damaged.getFileName() + "; "
                + backup.map(found -> "the backup of " + found.day()
                                + " is in its place: check what was changed since then")
                        .orElse("there was no backup, so the stock list is read again from its file: check holds and"
                                + " sales");
    }

    /** Moves a database with what belongs to it, itself first. */
    private static void move(Path file, Path to) throws IOException {
        for (String end : List.of("", "-wal", "-shm")) {
            Path part = Path.of(file + end);
            if (Files.exists(part)) {
                Files.move(part, Path.of(to + end));
            }
        }
    }

    /** Goes on where a power cut came between the damaged file's going and the backup's coming. */
    private static void finishMending(DatabaseFile file, Backups backups) throws IOException {
        if (!Files.exists(file.path()) && Files.exists(backups.prepared())) {
            move(file.path(), aside(file.path()));
            Files.move(backups.prepared(), file.path(), StandardCopyOption.ATOMIC_MOVE);
        }
    }

    private static Path aside(Path file) {
        int number = 1;
        while (Files.exists(file.resolveSibling("damaged-" + number + ".db"))) {
            number++;
        }
        return file.resolveSibling("damaged-" + number + ".db");
    }

    /** A database that can't be backed up can still be used; staff are told. */
    private static Optional<String> backUp(DatabaseFile file, Backups backups, Clock clock) {
        try {
            backups.make(file, clock.instant());
            return Optional.empty();
        } catch (IOException | NotKeptException e) {
            LOG.log(System.Logger.Level.WARNING, "No backup could be made", e);
            return Optional.of("no backup of the database could be made (" + e.getMessage()
                    + "); make room on the disk, then restart");
        }
    }
}
