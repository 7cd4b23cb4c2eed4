package fencerow.storage;

import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Comparator;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.extension.AfterAllCallback;
import org.junit.jupiter.api.extension.BeforeAllCallback;
import org.junit.jupiter.api.extension.BeforeEachCallback;
import org.junit.jupiter.api.extension.ExtensionContext;

/** A PostgreSQL server for the tests of a class, and a database with its tables for each test; if asked for. */
final class OwnServer implements BeforeAllCallback, BeforeEachCallback, AfterAllCallback {
    private Optional<TestServer> started = Optional.empty();
    private Optional<Path> folder = Optional.empty();
    private Optional<Server> database = Optional.empty();

    @Override
    public void beforeAll(ExtensionContext context) throws Exception {
        assumeTrue(Boolean.getBoolean(TestServer.ASKED_FOR), TestServer.HOW);
        Path data = Files.createTempDirectory("server");
        folder = Optional.of(data);
        started = Optional.of(TestServer.start(data));
    }

    @Override
    public void beforeEach(ExtensionContext context) throws Exception {
        Server fresh = postgres().database();
        database = Optional.of(fresh);
        Store.migrate(fresh, Optional.empty());
    }

    @Override
    public void afterAll(ExtensionContext context) throws Exception {
        if (started.isPresent()) {
            started.get().close();
        }
        if (folder.isPresent()) {
            delete(folder.get());
        }
    }

    private static void delete(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path each : all.sorted(Comparator.reverseOrder()).toList()) {
                Files.delete(each);
            }
        }
    }

    TestServer postgres() {
        return started.orElseThrow();
    }

    /** The test's own database. */
    Server database() {
        return database.orElseThrow();
    }
}
