package fencerow.storage;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.io.TempDir;

/** What a server keeps; the same as a file. */
class ServerStoreTest extends StoreContract {
    @TempDir
    static Path servers;

    private static Optional<TestServer> started = Optional.empty();

    @TempDir
    Path folder;

    private Optional<Server> server = Optional.empty();

    @BeforeAll
    static void start() throws Exception {
        assumeTrue(Boolean.getBoolean(TestServer.ASKED_FOR), TestServer.HOW);
        started = Optional.of(TestServer.start(servers));
    }

    @AfterAll
    static void stop() throws Exception {
        if (started.isPresent()) {
            started.get().close();
        }
    }

    @BeforeEach
    void makeADatabase() throws Exception {
        server = Optional.of(started.orElseThrow().database());
        Store.migrate(server.get(), Optional.empty());
    }

    @Override
    Store open(Clock clock) throws UnusableStoreException {
        return Store.open(folder, server, clock);
    }
}
