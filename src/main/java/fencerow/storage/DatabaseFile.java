package fencerow.storage;

import fencerow.desk.NotKeptException;
import fencerow.desk.NotKeptException.Cause;
import java.nio.file.Path;
import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.sqlite.SQLiteConfig;
import org.sqlite.SQLiteDataSource;
import org.sqlite.SQLiteErrorCode;
import org.sqlite.SQLiteException;

/**
 * The database's file, and everything that only SQLite knows. Write-ahead log with full synchronization: a transaction
 * that has returned is on the disk. A transaction takes the right to write at its start, so that it can't fail half way
 * for another program's sake.
 */
final class DatabaseFile implements Database {
    private static final int MOST_WAIT_MILLIS = 10_000;

    private final Path file;
    private final SQLiteDataSource source;
    private final Jdbi jdbi;

    /** Names the file; nothing is opened. */
    DatabaseFile(Path file) {
        this(file, Integer.MAX_VALUE);
    }

    /** The same on a disk with room for so many pages of 4 KiB. */
    DatabaseFile(Path file, int mostPages) {
        this.file = file;
        var config = new SQLiteConfig();
        config.setJournalMode(SQLiteConfig.JournalMode.WAL);
        config.setSynchronous(SQLiteConfig.SynchronousMode.FULL);
        config.setTransactionMode(SQLiteConfig.TransactionMode.IMMEDIATE);
        config.setBusyTimeout(MOST_WAIT_MILLIS);
        config.enforceForeignKeys(true);
        config.setMaxPageCount(mostPages);
        this.source = new SQLiteDataSource(config);
        source.setUrl("jdbc:sqlite:" + file);
        this.jdbi = Jdbi.create(source);
    }

    Path path() {
        return file;
    }

    SQLiteDataSource source() {
        return source;
    }

    /** A connection of one's own. */
    Connection connect() throws SQLException {
        return source.getConnection();
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        try {
            return jdbi.withHandle(work::apply);
        } catch (JdbiException e) {
            throw failure(e);
        }
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(work::apply);
        } catch (JdbiException e) {
            throw failure(e);
        }
    }

    /** What the failure means for whoever waits for the answer. */
    NotKeptException failure(Throwable thrown) {
        Throwable each = thrown;
        while (each.getCause() != null && !(each instanceof SQLiteException)) {
            each = each.getCause();
        }
        Cause cause = each instanceof SQLiteException sqlite ? cause(sqlite.getResultCode()) : Cause.OTHER;
        String advice = switch (cause) {
            case DISK_FULL -> "the disk is full; delete files, or give the data folder another disk";
            case READ_ONLY -> "it may not be written; give this user the right to write in its folder";
            case BUSY -> "another program holds it; close that program, then try again";
            case DAMAGED -> "it is damaged; start the kiosk again, which restores the last backup";
            case AWAY, OTHER -> each.getClass().getSimpleName() + ": " + each.getMessage() + "; try again";
        };
        return new NotKeptException(cause, file + ": " + advice, thrown);
    }

    private static Cause cause(SQLiteErrorCode code) {
        if (code == SQLiteErrorCode.SQLITE_IOERR_SHMSIZE) {
            // The file that its users share has no room.
            return Cause.DISK_FULL;
        }
        // Extended codes keep the plain one in their low byte.
        return switch (code.code & 0xff) {
            case 13 -> Cause.DISK_FULL;
            case 8, 14, 3, 23 -> Cause.READ_ONLY;
            case 5, 6 -> Cause.BUSY;
            case 11, 26 -> Cause.DAMAGED;
            default -> Cause.OTHER;
        };
    }

    /** Whether the file is whole; a file that is not there is. @throws NotKeptException if it cannot be looked at */
    boolean isWhole() {
        try (Connection connection = connect();
                Statement statement = connection.createStatement();
                ResultSet result = statement.executeQuery("pragma quick_check(1)")) {
            return result.next() && result.getString(1).equals("ok");
        } catch (SQLException e) {
            NotKeptException failure = failure(e);
            if (failure.why() == Cause.DAMAGED) {
                return false;
            }
            throw failure;
        }
    }

    /** Writes a whole copy, everything committed so far. @throws NotKeptException if that cannot be done */
    void copyTo(Path copy) {
        try (Connection connection = connect();
                Statement statement = connection.createStatement()) {
            statement.execute("vacuum into '" + copy.toString().replace("'", "''") + "'");
        } catch (SQLException e) {
            throw failure(e);
        }
    }
}
