package fencerow.storage;


import java.nio.file.Path;
import java.time.Clock;
import java.util.Optional;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.api.io.TempDir;

/** What a server keeps; the same as a file. */
class ServerStoreTest extends StoreContract {
    @RegisterExtension
    private static final OwnServer OWN = new OwnServer();

    @TempDir
    Path folder;

    @Override
    Store open(Clock clock) throws UnusableStoreException {
        return Store.open(folder, Optional.of(OWN.database()), clock);
    }
}
