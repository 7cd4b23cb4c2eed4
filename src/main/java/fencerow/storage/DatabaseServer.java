package fencerow.storage;

import com.zaxxer.hikari.HikariConfig;
import com.zaxxer.hikari.HikariDataSource;
import fencerow.desk.NotKeptException;
import fencerow.desk.NotKeptException.Cause;
import java.sql.Connection;
import java.sql.SQLException;
import java.sql.SQLTransientConnectionException;
import java.sql.Statement;
import java.time.Duration;
import java.util.List;
import java.util.Objects;
import java.util.function.Function;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.Jdbi;
import org.jdbi.v3.core.JdbiException;
import org.postgresql.PGConnection;

/**
 * A PostgreSQL server, and everything that only it knows. Writers queue for one lock, as they do for the file, so that
 * the statements need not know what else is going on; each write tells those who listen.
 */
final class DatabaseServer implements Database, AutoCloseable {
    private static final int MOST_CONNECTIONS = 8;
    private static final long MOST_WAIT_MILLIS = 2_000;
    private static final long LOCK = 0x66656e63;
    /** What a session is told first. One that was cut off must not hold the lock for the others for long. */
    private static final String FIRST = "set lock_timeout = '10s'; set idle_in_transaction_session_timeout = '60s'; "
            + "set tcp_keepalives_idle = 10; set tcp_keepalives_interval = 5; set tcp_keepalives_count = 3";
    /** A statement that writes where nothing may: a server that follows another, or a database set so. */
    private static final String ONLY_READS = "25006";
    /** The pool tells of every server that is away; only what we make of it matters. */
    private static final Logger POOL = Logger.getLogger("com.zaxxer.hikari");

    private static final Logger DRIVER = Logger.getLogger("org.postgresql");

    private final Server server;
    private final HikariDataSource pool;
    private final Jdbi jdbi;

    /** Names the server; connections are made when first needed. */
    DatabaseServer(Server server) {
        POOL.setLevel(Level.OFF);
        DRIVER.setLevel(Level.OFF);
        this.server = server;
        var config = new HikariConfig();
        config.setPoolName("fencerow");
        config.setJdbcUrl(server.url());
        config.setUsername(server.user());
        config.setPassword(server.password());
        config.setMaximumPoolSize(MOST_CONNECTIONS);
        config.setMinimumIdle(1);
        config.setConnectionTimeout(MOST_WAIT_MILLIS);
        config.setInitializationFailTimeout(-1);
        config.setConnectionInitSql(FIRST);
        config.addDataSourceProperty("connectTimeout", "2");
        config.addDataSourceProperty("socketTimeout", "30");
        config.addDataSourceProperty("tcpKeepAlive", "true");
        config.addDataSourceProperty("ApplicationName", "fencerow");
        this.pool = new HikariDataSource(config);
        this.jdbi = Jdbi.create(pool);
    }

    HikariDataSource source() {
        return pool;
    }

    @Override
    public <T> T read(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(handle -> {
                handle.execute("set transaction isolation level repeatable read, read only");
                return work.apply(handle);
            });
        } catch (JdbiException e) {
            throw failure(e);
        }
    }

    @Override
    public <T> T write(Function<Handle, T> work) {
        try {
            return jdbi.inTransaction(handle -> {
                handle.execute("select pg_advisory_xact_lock(?)", LOCK);
                T result = work.apply(handle);
                handle.execute("notify fencerow");
                return result;
            });
        } catch (JdbiException e) {
            throw failure(e);
        }
    }

    /** @throws NotKeptException unless the server is there and its tables are those of this version */
    void checkVersion() {
        int version;
        try (Connection connection = pool.getConnection()) {
            version = connection.isValid(1) ? Migrations.version(pool) : 0;
        } catch (SQLException e) {
            throw failure(e);
        }
        if (version < Migrations.NEWEST) {
            throw new NotKeptException(Cause.OTHER, server + ": the tables are not there or of an older version ["
                    + version + "]; run fencerow store migrate with the login of their owner");
        }
        if (version > Migrations.NEWEST) {
            throw new NotKeptException(Cause.OTHER, server + ": the tables are of a newer version [" + version
                    + "]; bring this kiosk up to date");
        }
    }

    /** The server's own version, such as 16. @throws NotKeptException if it is away */
    int version() {
        return read(handle -> handle.createQuery("select current_setting('server_version_num')::integer / 10000")
                .mapTo(Integer.class)
                .one());
    }

    /** @throws NotKeptException unless the login may read and write the rows of every table */
    void checkRights() {
        List<String> closed = read(handle -> Tables.names(handle).stream()
                .filter(table -> !handle.createQuery("select has_table_privilege(:table, 'select')"
                                + " and has_table_privilege(:table, 'insert') and has_table_privilege(:table, 'update')"
                                + " and has_table_privilege(:table, 'delete')")
                        .bind("table", table)
                        .mapTo(Boolean.class)
                        .one())
                .toList());
        if (!closed.isEmpty()) {
            throw new NotKeptException(Cause.READ_ONLY, server + ": the login may not read and write the rows of "
                    + String.join(", ", closed) + "; give its role the right (fencerow store migrate --grant)");
        }
    }

    /** Lets a role read and write rows, and change nothing else. @throws NotKeptException if that cannot be done */
    void grant(String role) {
        String name = '"' + role.replace("\"", "\"\"") + '"';
        write(handle -> {
            Tables.names(handle).forEach(table -> handle.execute(
                    "grant select, insert, update, delete on " + table + " to " + name));
            return handle.execute("grant select on " + Tables.HISTORY + " to " + name);
        });
    }

    /** A connection that hears of every write. @throws NotKeptException if there is none */
    Connection listen() {
        try {
            Connection listening = pool.getConnection();
            try (Statement statement = listening.createStatement()) {
                statement.execute("listen fencerow");
            }
            return listening;
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    /** Waits until something was written, at most so long. @throws NotKeptException if the connection broke */
    void await(Connection listening, Duration most) {
        try {
            int millis = (int) Math.max(1, most.toMillis());
            Objects.requireNonNull(listening.unwrap(PGConnection.class)).getNotifications(millis);
        } catch (SQLException e) {
            throw failure(e);
        }
    }

    /**
     * What the failure means for whoever waits for the answer. Its own words stay out: they may quote the login.
     *
     * @param thrown by the driver, the pool or the SQL library
     */
    NotKeptException failure(Throwable thrown) {
        String state = "";
        boolean noConnection = false;
        for (Throwable each = thrown; each != null; each = each.getCause()) {
            if (each instanceof SQLException sql) {
                state = Objects.requireNonNullElse(sql.getSQLState(), state);
                noConnection |= each instanceof SQLTransientConnectionException;
            }
        }
        Cause cause = cause(state, noConnection);
        String advice = switch (cause) {
            case AWAY -> state.startsWith("28") || state.startsWith("3D")
                    ? "the server refuses the login or has no such database; correct the login or the URL"
                    : "the server does not answer; see whether it runs and can be reached";
            case DISK_FULL -> "the server's disk is full; make room there";
            case READ_ONLY -> state.equals(ONLY_READS)
                    ? "it can only be read now; name the server that is written to, or take"
                            + " default_transaction_read_only off the database or the role"
                    : "the login may not do this; give its role the right (fencerow store migrate --grant)";
            case BUSY -> "another program holds it; try again";
            case DAMAGED -> "the server says that its data are damaged; restore its last backup";
            case OTHER -> "the server could not do it; try again";
        };
        // While it is away the words stay the same, whichever way it fails.
        String code = cause == Cause.AWAY || state.isEmpty() ? "" : " [" + state + "]";
        return new NotKeptException(cause, server + ": " + advice + code);
    }

    /** By the codes of PostgreSQL's manual, appendix A. */
    private static Cause cause(String state, boolean noConnection) {
        if (state.startsWith("08") || state.startsWith("57P") || state.startsWith("28") || state.startsWith("3D")) {
            return Cause.AWAY;
        }
        return switch (state) {
            case "53100" -> Cause.DISK_FULL;
            case "42501", ONLY_READS -> Cause.READ_ONLY;
            case "55P03", "40001", "40P01", "53300" -> Cause.BUSY;
            case "XX001", "XX002" -> Cause.DAMAGED;
            default -> noConnection ? Cause.AWAY : Cause.OTHER;
        };
    }

    @Override
    public void close() {
        pool.close();
    }

    @Override
    public String toString() {
        return server.toString();
    }
}
