package fencerow.storage;

import io.zonky.test.db.postgres.embedded.EmbeddedPostgres;
import java.io.IOException;
import java.net.ServerSocket;
import java.net.Socket;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.SQLException;
import java.sql.Statement;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.TimeUnit;
import java.util.logging.Level;
import java.util.logging.Logger;
import java.util.stream.Stream;

/**
 * A PostgreSQL server of the tests' own on loopback: the binaries that come as a library, or Debian's where those
 * cannot start.
 */
public final class TestServer implements AutoCloseable {
    /** Whether tests are to use one. */
    public static final String ASKED_FOR = "fencerow.postgres";

    /** Why they do not. */
    public static final String HOW =
            "SKIPPED: nothing was tried on a PostgreSQL server; mvn -Ppostgres -Dtest='Server*Test' test";

    private static final String SECRET = "tumble-gate-77";

    /** It tells of each start, and of the stop that a killed one no longer needs. */
    private static final Logger LIBRARY = Logger.getLogger("io.zonky.test.db.postgres");

    private final Path folder;
    private final int port;
    private final boolean sync;
    private final Optional<Path> debian;
    private Optional<EmbeddedPostgres> embedded = Optional.empty();
    private int databases;

    private TestServer(Path folder, int port, boolean sync, Optional<Path> debian) {
        LIBRARY.setLevel(Level.OFF);
        this.folder = folder;
        this.port = port;
        this.sync = sync;
        this.debian = debian;
    }

    /**
     * Starts one whose data lie in a folder; enough where the server alone is killed and not the machine.
     *
     * @throws IllegalStateException if none can be started here
     */
    public static TestServer start(Path folder) throws Exception {
        return start(folder, false);
    }

    /** Starts one; with {@code sync} it waits for the disk before it answers, as a showroom's does. */
    static TestServer start(Path folder, boolean sync) throws Exception {
        int port = freePort();
        var server = new TestServer(folder.resolve("embedded"), port, sync, Optional.empty());
        try {
            server.startAgain();
            return server;
        } catch (IOException | IllegalStateException e) {
            Path programs = debian().orElseThrow(() -> new IllegalStateException(
                    "no PostgreSQL can be started here: the library's does not (" + e.getMessage()
                            + ") and Debian's is not there; install the package postgresql", e));
            System.err.println("PostgreSQL: the library's does not start here (" + e.getMessage() + "); taking "
                    + programs);
            var installed = new TestServer(folder.resolve("installed"), port, sync, Optional.of(programs));
            installed.initialize(programs);
            installed.startAgain();
            return installed;
        }
    }

    private static int freePort() throws IOException {
        try (ServerSocket socket = new ServerSocket(0)) {
            return socket.getLocalPort();
        }
    }

    private static Optional<Path> debian() throws IOException {
        Path versions = Path.of("/usr/lib/postgresql");
        if (!Files.isDirectory(versions)) {
            return Optional.empty();
        }
        try (Stream<Path> all = Files.list(versions)) {
            return all.map(version -> version.resolve("bin"))
                    .filter(programs -> Files.isExecutable(programs.resolve("initdb")))
                    .findFirst();
        }
    }

    private void initialize(Path programs) throws Exception {
        Files.createDirectories(folder);
        for (Path up = folder; up != null && !up.equals(Path.of("/tmp")); up = up.getParent()) {
            // The server runs as another user, who must be able to reach its folder.
            Files.setPosixFilePermissions(up, PosixFilePermissions.fromString("rwxr-xr-x"));
        }
        run("chown", "-R", "postgres", folder.toString());
        run("runuser", "-u", "postgres", "--", programs.resolve("initdb").toString(), "-D", folder.toString(),
                "-U", "postgres", "-A", "trust", "-E", "UTF8", "--no-sync");
    }

    /** Starts it with the data as they are. */
    public void startAgain() throws Exception {
        if (debian.isPresent()) {
            run("runuser", "-u", "postgres", "--", debian.get().resolve("pg_ctl").toString(), "-D", folder.toString(),
                    "-w", "-l", folder.resolve("log").toString(), "-o",
                    "-p " + port + " -k " + folder + " -c fsync=" + (sync ? "on" : "off"), "start");
        } else {
            embedded = Optional.of(EmbeddedPostgres.builder()
                    .setDataDirectory(folder)
                    .setCleanDataDirectory(false)
                    .setPort(port)
                    .setPGStartupWait(Duration.ofSeconds(60))
                    .setServerConfig("fsync", sync ? "on" : "off")
                    .setServerConfig("synchronous_commit", "on")
                    // A local socket's lock would outlive a killed server and keep it from starting again.
                    .setServerConfig("unix_socket_directories", "")
                    .start());
        }
    }

    /** Kills it at once, as a power cut would. */
    public void kill() throws Exception {
        Path file = folder.resolve("postmaster.pid");
        long process = Long.parseLong(Files.readAllLines(file).get(0).strip());
        // Held first, so that it starts no more processes: one that is left over would keep it from starting again.
        run("kill", "-STOP", Long.toString(process));
        ProcessHandle.of(process).ifPresent(server -> Stream.concat(server.descendants(), Stream.of(server))
                .toList()
                .forEach(ProcessHandle::destroyForcibly));
        while (answers()) {
            Thread.sleep(5);
        }
        Files.deleteIfExists(file);
        if (embedded.isPresent()) {
            // It holds a lock on the folder.
            embedded.get().close();
        }
    }

    private boolean answers() {
        try (Socket socket = new Socket("localhost", port)) {
            return socket.isConnected();
        } catch (IOException e) {
            return false;
        }
    }

    /** An empty database of its own, whose login may do anything in it. */
    public synchronized Server database() throws Exception {
        String name = "yard_" + ++databases;
        run("drop database if exists " + name, "postgres");
        run("create database " + name, "postgres");
        return server(name, "postgres", "-");
    }

    /** The database with another login. */
    public Server server(String database, String user, String password) throws Exception {
        Path login = Files.createTempFile("database", ".login");
        try {
            Files.setPosixFilePermissions(login, PosixFilePermissions.fromString("rw-------"));
            Files.writeString(login, "user=" + user + "\npassword=" + password + "\n");
            return Server.of("postgresql://localhost:" + port + "/" + database, login);
        } finally {
            Files.delete(login);
        }
    }

    /** Runs a statement with every right. */
    public void run(String statement, String database) throws SQLException {
        try (Connection connection = DriverManager.getConnection(
                        "jdbc:postgresql://localhost:" + port + "/" + database, "postgres", SECRET);
                Statement open = connection.createStatement()) {
            open.execute(statement);
        }
    }

    /** Lets a database be only read, or written again; connections that are open are cut, as a restart would. */
    public void onlyReads(String database, boolean so) throws SQLException {
        run("alter database " + database + " set default_transaction_read_only = " + (so ? "on" : "off"), "postgres");
        run("select pg_terminate_backend(pid) from pg_stat_activity where datname = '" + database + "'", "postgres");
    }

    /** The URL of a database, as it is written into the configuration. */
    public static String url(Server database) {
        return "postgresql://" + database;
    }

    private static void run(String... command) throws IOException {
        Process process = new ProcessBuilder(command).redirectErrorStream(true)
                .redirectOutput(ProcessBuilder.Redirect.DISCARD).start();
        int code = process.onExit().orTimeout(60, TimeUnit.SECONDS).join().exitValue();
        if (code != 0) {
            throw new IllegalStateException(String.join(" ", command) + " ended with " + code);
        }
    }


    @Override
    public void close() throws IOException {
        if (debian.isPresent()) {
            run("runuser", "-u", "postgres", "--", debian.get().resolve("pg_ctl").toString(), "-D", folder.toString(),
                    "-m", "immediate", "stop");
        } else if (embedded.isPresent()) {
            embedded.get().close();
        }
    }
}
