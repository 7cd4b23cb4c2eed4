package fencerow.storage;

import fencerow.desk.ComeBacks;
import fencerow.desk.Journal;
import fencerow.desk.Memory;
import fencerow.desk.NotKeptException;
import fencerow.desk.StockBook;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.sql.Connection;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Supplier;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;

/**
 * The database. One file: opened, brought up to date, backed up once a day, and restored from the newest backup if it
 * is damaged; several programs may have it open at once. Or a server that several kiosks share: while it is away, what
 * was last seen is read, and counts wait. May be used from any thread.
 */
public final class Store implements AutoCloseable {
    /** The file's name in the data folder. */
    public static final String FILE = "fencerow.db";

    private static final System.Logger LOG = System.getLogger(Store.class.getName());

    private final Database database;
    private final Optional<SharedDatabase> shared;
    private final AutoCloseable keeper;
    private final Supplier<List<String>> notices;
    private final Clock clock;

    private Store(Database database, Optional<SharedDatabase> shared, AutoCloseable keeper,
            Supplier<List<String>> notices, Clock clock) {
        this.database = database;
        this.shared = shared;
        this.keeper = keeper;
        this.notices = notices;
        this.clock = clock;
    }

    /** @param keeper a connection that is open as long as the store is */
    static Store of(DatabaseFile file, Connection keeper, List<String> notices, Clock clock) {
        List<String> told = List.copyOf(notices);
        return new Store(file, Optional.empty(), keeper, () -> told, clock);
    }

    /**
     * Opens the database of a folder; makes both if they are not there.
     *
     * @param clock dates changes and backups
     * @throws UnusableStoreException if the folder or the file cannot be written, or is not ours
     */
    public static Store open(Path folder, Clock clock) throws UnusableStoreException {
        return FileOpening.open(folder, clock);
    }

    /**
     * Opens the database of a server, whether it is there now or not; without one, that of the folder.
     *
     * @param folder where the copy of what was last seen is kept, and counts that wait
     * @param clock  dates changes
     * @throws UnusableStoreException if the folder cannot be written
     */
    public static Store open(Path folder, Optional<Server> server, Clock clock) throws UnusableStoreException {
        if (server.isEmpty()) {
            return open(folder, clock);
        }
        try {
            Files.createDirectories(folder);
            var shared = new SharedDatabase(server.get(), folder, clock);
            return new Store(shared, Optional.of(shared), shared, shared::notices, clock);
        } catch (IOException e) {
            throw new UnusableStoreException("the data folder " + folder + " cannot be used ("
                    + e.getClass().getSimpleName() + "); let this user write there, or name another folder", e);
        } catch (NotKeptException e) {
            throw new UnusableStoreException(String.valueOf(e.getMessage()), e);
        }
    }

    /**
     * What a folder's database holds, for a kiosk to go on with while it cannot be opened: everything can be read and
     * nothing written.
     *
     * @param refused why it cannot be opened
     * @return empty where there is no database, or none that can be read
     */
    public static Optional<Store> findToRead(Path folder, UnusableStoreException refused, Clock clock) {
        return ReadCopy.of(folder, refused).map(copy -> new Store(copy, Optional.empty(), copy, List::of, clock));
    }

    /**
     * Makes the tables of a server, or brings them up to date.
     *
     * @param owner with the login of who may change the schema
     * @param role  of the kiosks, which gets the right to read and write rows and nothing else; empty where it has it
     * @throws UnusableStoreException if that cannot be done
     */
    public static void migrate(Server owner, Optional<String> role) throws UnusableStoreException {
        try (var server = new DatabaseServer(owner)) {
            server.read(Handle::getConnection);
            Migrations.run(server);
            role.ifPresent(server::grant);
        } catch (NotKeptException e) {
            throw new UnusableStoreException(String.valueOf(e.getMessage()));
        } catch (FlywayException e) {
            // Its message may name the login.
            throw new UnusableStoreException(owner + ": the tables cannot be brought up to date; check that the login"
                    + " is of their owner and that they were not written by a newer version");
        }
    }

    /**
     * Tries whether a kiosk can work with a server: whether it answers, its tables are those of this version, and the
     * login may read and write their rows.
     *
     * @return the server's own version, such as 16
     * @throws UnusableStoreException if it cannot; says what to do
     */
    public static int tryOut(Server named) throws UnusableStoreException {
        try (var server = new DatabaseServer(named)) {
            // First: who may not read the tables cannot tell their version either.
            server.checkRights();
            server.checkVersion();
            return server.version();
        } catch (NotKeptException e) {
            throw new UnusableStoreException(String.valueOf(e.getMessage()));
        }
    }

    /** What staff must know now: each says what happened and what to do. */
    public List<String> notices() {
        return notices.get();
    }

    /** Why the server cannot be used now, if there is one and it cannot. */
    public Optional<String> findTrouble() {
        return shared.flatMap(SharedDatabase::trouble).map(why -> String.valueOf(why.getMessage()));
    }

    /** The name of this kiosk among those that share a server; empty where it has a database of its own. */
    public Optional<String> findKiosk() {
        return shared.map(SharedDatabase::kiosk);
    }

    /**
     * Waits until others have changed something on the server, at most so long; then brings the copy up to date, hands
     * in what waits, and finds out whether the server is there. To be called over and over, from a thread of its own.
     *
     * @param most the longest wait; how soon a server that went away is looked for again
     */
    public void follow(Duration most) {
        shared.ifPresent(server -> server.follow(most));
    }

    /** The units. */
    public StockBook stock() {
        return new SqlStockBook(database, clock);
    }

    /** The counts. */
    public Journal journal() {
        return shared.<Journal>map(server -> server).orElseGet(() -> new SqlJournal(database));
    }

    /** Visits that shoppers may come back to. */
    public ComeBacks comeBacks() {
        // A code that was not looked up must not count as a wrong one: without the server there is no answer.
        return new SqlComeBacks(shared.map(SharedDatabase::serverAlone).orElse(database));
    }

    /** What is remembered. */
    public Memory memory() {
        return new SqlMemory(database);
    }

    @Override
    public void close() {
        try {
            keeper.close();
        } catch (Exception e) {
            LOG.log(System.Logger.Level.WARNING, "The database could not be closed", e);
        }
    }
}
