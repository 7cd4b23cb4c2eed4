package fencerow.storage;

import fencerow.desk.NotKeptException;
import fencerow.desk.NotKeptException.Cause;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;

/**
 * What a database holds that can't be opened where it is, because its disk is full or it may not be written: a copy
 * that is read as long as the kiosk runs. The file itself is not touched.
 */
final class ReadCopy implements Database, AutoCloseable {
    private static final System.Logger LOG = System.getLogger(ReadCopy.class.getName());
    /** Memory that looks like a disk: where the only disk is full. */
    private static final Path IN_MEMORY = Path.of("/dev/shm");

    private static final List<String> PARTS = List.of("", "-wal", "-shm");

    private final Path folder;
    private final DatabaseFile file;
    private final Cause why;
    private final String message;

    private ReadCopy(Path folder, Cause why, String message) {
        this.folder = folder;
        this.file = new DatabaseFile(folder.resolve(Store.FILE));
        this.why = why;
        this.message = message;
    }

    /**
     * Copies the database of a folder, if one is there and whole.
     *
     * @param refused why it cannot be opened; what writers are told
     */
    static Optional<ReadCopy> of(Path folder, UnusableStoreException refused) {
        Path database = folder.resolve(Store.FILE);
        Cause why = refused.getCause() instanceof NotKeptException kept ? kept.why() : cause(folder);
        if (!Files.isReadable(database)) {
            return Optional.empty();
        }
        return copied(database, Path.of(System.getProperty("java.io.tmpdir", "/tmp")))
                .or(() -> copied(database, IN_MEMORY))
                .map(copy -> new ReadCopy(copy, why, String.valueOf(refused.getMessage())));
    }

    /** Why nothing can be written there. */
    private static Cause cause(Path folder) {
        try {
            return Files.getFileStore(folder).getUsableSpace() == 0 ? Cause.DISK_FULL : Cause.READ_ONLY;
        } catch (IOException e) {
            return Cause.READ_ONLY;
        }
    }

    /** Copies it to a folder of its own in the place. @return that folder */
    private static Optional<Path> copied(Path database, Path place) {
        Optional<Path> folder = Optional.empty();
        try {
            Path made = Files.createTempDirectory(place, "fencerow");
            folder = Optional.of(made);
            Path copy = made.resolve(Store.FILE);
            for (String part : List.of("", "-wal")) {
                Path from = Path.of(database + part);
                if (Files.exists(from)) {
                    Files.copy(from, Path.of(copy + part), StandardCopyOption.REPLACE_EXISTING);
                }
            }
            var file = new DatabaseFile(copy);
            if (file.isWhole()) {
                Migrations.run(file);
                return Optional.of(made);
            }
        } catch (IOException | NotKeptException | FlywayException e) {
            LOG.log(System.Logger.Level.WARNING, "The database could not be copied to be read", e);
        }
        folder.ifPresent(ReadCopy::delete);
        return Optional.empty();
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        return file.read(work);
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        throw new NotKeptException(why, message);
    }

    @Override
    public void close() {
        delete(folder);
    }

    private static void delete(Path folder) {
        try {
            for (String part : PARTS) {
                Files.deleteIfExists(folder.resolve(Store.FILE + part));
            }
            Files.deleteIfExists(folder);
        } catch (IOException e) {
            LOG.log(System.Logger.Level.WARNING, "A copy of the database could not be deleted: " + folder);
        }
    }
}
