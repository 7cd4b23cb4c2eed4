package fencerow.backoffice;

import fencerow.desk.NotKeptException;
import fencerow.storage.Relocation;
import fencerow.storage.Server;
import fencerow.storage.UnusableStoreException;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;

/** Moves all that is in the database to the server, or back into the file. */
@Command(name = "move", mixinStandardHelpOptions = true,
        description = "Copies all that is in the database to the server that showroom.yaml names, or from there into"
                + " the kiosk's own file, and checks that all of it arrived. Close the kiosks first.")
final class StoreMoveCommand implements Callable<Integer> {
    private final FencerowCommand top;

    @Option(names = "--to", required = true, paramLabel = "server|file", description = "Where to.")
    private Where to = Where.server;

    @Option(names = "--overwrite", description = "Delete what is there, if there is anything.")
    private boolean overwrite;

    /** Where to. */
    enum Where { server, file }

    StoreMoveCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws FailedException {
        try {
            Server server = top.getServer();
            var relocation = new Relocation(top.dataFolder(), server, top.surroundings().clock());
            List<Relocation.Moved> moved =
                    to == Where.server ? relocation.toServer(overwrite) : relocation.toFile(overwrite);
            var document = new MovedDocument(to.name(), moved.stream()
                    .map(each -> new TableEntry(each.table(), each.rows(), each.checksum()))
                    .toList());
            top.print(document, () -> text(document));
            return FencerowCommand.FINE;
        } catch (UnusableStoreException | NotKeptException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    private static String text(MovedDocument document) {
        var sheet = new TextSheet();
        document.tables().forEach(each ->
                sheet.line(0, each.table() + ": " + each.rows() + " rows, checksum " + each.checksum()));
        sheet.heading("All of it is there, as counts and checksums say.");
        return sheet.toString();
    }

    /** What {@code store move --json} prints. */
    record MovedDocument(String to, List<TableEntry> tables) {}

    /** One table of it. */
    record TableEntry(String table, long rows, String checksum) {}
}
