package fencerow.backoffice;

import fencerow.content.ShowroomLine;
import fencerow.storage.Server;
import fencerow.storage.Store;
import fencerow.storage.UnusableStoreException;
import java.nio.file.Path;
import java.util.Optional;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Makes the tables on the server, or brings them up to date. */
@Command(name = "migrate", mixinStandardHelpOptions = true,
        description = "Makes the tables on the server that showroom.yaml names, or brings them up to date.")
final class StoreMigrateCommand implements Callable<Integer> {
    private final FencerowCommand top;

    @Option(names = "--login", paramLabel = "FILE",
            description = "File with user= and password= of the tables' owner. Default: the kiosk's own login.")
    private Optional<Path> login = Optional.empty();

    @Option(names = "--grant", paramLabel = "ROLE",
            description = "The kiosks' role: it gets the right to read and write rows, and no other.")
    private Optional<String> role = Optional.empty();

    StoreMigrateCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws FailedException {
        try {
            Server server = login.isPresent()
                    ? Server.of(ShowroomLine.database(top.folders().config()), login.get())
                    : top.getServer();
            Store.migrate(server, role);
            var done = new Migrated(server.toString());
            top.print(done, () -> "The tables in " + done.server() + " are up to date.\n");
            return FencerowCommand.FINE;
        } catch (UnusableStoreException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    /** What {@code store migrate --json} prints. */
    record Migrated(String server) {}
}
