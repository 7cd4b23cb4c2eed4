package fencerow.storage;

import fencerow.desk.NotKeptException;
import fencerow.desk.NotKeptException.Cause;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.jdbi.v3.core.Handle;

/** Copies all that is in one database into another: every table, whatever it is, in one transaction on either side. */
public final class Relocation {
    /** Filled as soon as there are tables. */
    private static final Set<String> NEVER_EMPTY = Set.of("instance", "revision");

    private final Path folder;
    private final Server server;
    private final Clock clock;

    /**
     * Copies nothing yet.
     *
     * @param folder the data folder with the file
     * @param clock  dates the file's backup
     */
    public Relocation(Path folder, Server server, Clock clock) {
        this.folder = folder;
        this.server = server;
        this.clock = clock;
    }

    /**
     * One table that was copied.
     *
     * @param rows     as many here as there
     * @param checksum of all rows, the same here and there; 16 hexadecimal digits
     */
    public record Moved(String table, long rows, String checksum) {}

    /**
     * From the file to the server.
     *
     * @param overwrite whether what is there may be deleted
     * @throws UnusableStoreException if the file cannot be opened
     * @throws NotKeptException       if the server is away or has no tables, if something is there already, or not all
     *                                arrived; then nothing was changed
     */
    public List<Moved> toServer(boolean overwrite) throws UnusableStoreException {
        // Opened as the kiosk does it: mended, up to date, backed up.
        Store.open(folder, clock).close();
        try (var to = new DatabaseServer(server)) {
            to.checkVersion();
            return copy(new DatabaseFile(folder.resolve(Store.FILE)), to, server.toString(), overwrite);
        }
    }

    /** From the server into the file, which is kept as {@code before-move.db}; otherwise as {@link #toServer}. */
    public List<Moved> toFile(boolean overwrite) throws UnusableStoreException {
        Store.open(folder, clock).close();
        try (var from = new DatabaseServer(server)) {
            from.checkVersion();
            var to = new DatabaseFile(folder.resolve(Store.FILE));
            if (overwrite) {
                Path before = folder.resolve("before-move.db");
                Files.deleteIfExists(before);
                to.copyTo(before);
            }
            return copy(from, to, to.path().toString(), overwrite);
        } catch (IOException e) {
            throw new UnusableStoreException(folder + ": what is there cannot be kept beside before it is overwritten ("
                    + e.getClass().getSimpleName() + "); see to the disk");
        }
    }

    private static List<Moved> copy(Database from, Database to, String target, boolean overwrite) {
        return from.read(source -> to.write(written -> {
            List<String> tables = Tables.names(source);
            if (!overwrite && tables.stream().anyMatch(table -> hasRows(written, table))) {
                throw new NotKeptException(Cause.OTHER, target + ": there is something in it already; nothing was"
                        + " moved. Say --overwrite if all of that may be deleted");
            }
            Tables.empty(written, tables);
            List<Moved> moved = new ArrayList<>();
            for (String table : tables) {
                Tables.copy(source, "select * from " + table, written, table);
                Tables.Sum here = Tables.sum(source, table);
                Tables.Sum there = Tables.sum(written, table);
                if (!here.equals(there)) {
                    throw new NotKeptException(Cause.OTHER, target + ": of table [" + table + "] not all arrived;"
                            + " nothing was moved. See to the disk, then try again");
                }
                moved.add(new Moved(table, here.rows(), String.format(Locale.ROOT, "%016x", here.sum())));
            }
            return moved;
        }));
    }

    private static boolean hasRows(Handle handle, String table) {
        return !NEVER_EMPTY.contains(table)
                && Tables.sum(handle, table).rows() > 0;
    }
}
