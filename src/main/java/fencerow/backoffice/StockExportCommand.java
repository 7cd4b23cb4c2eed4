package fencerow.backoffice;

import fencerow.content.StockExport;
import fencerow.desk.NotKeptException;
import fencerow.desk.Sale;
import fencerow.desk.StockRow;
import fencerow.storage.Store;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Parameters;

/** Writes the stock book into a file. */
@Command(name = "export", mixinStandardHelpOptions = true,
        description = "Writes the units that are not sold into a stock list (CSV, or XLSX by its name).")
final class StockExportCommand implements Callable<Integer> {
    private final FencerowCommand top;

    @Parameters(paramLabel = "FILE", description = "The file to write.")
    private Path file = Path.of("");

    StockExportCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException, FailedException {
        Premises premises = top.open();
        try (Store store = top.openStore()) {
            List<StockRow> rows = store.stock().entries().stream()
                    .filter(entry -> !(entry.sale() instanceof Sale.Sold))
                    .map(entry -> entry.row())
                    .toList();
            new StockExport(premises.content().units()).write(file, rows);
            var document = new StockExported(file.toString(), rows.size());
            top.print(document, () -> rows.size() + " units written to " + file + "\n");
            return FencerowCommand.FINE;
        } catch (IOException e) {
            throw new FailedException(file + " cannot be written (" + e.getClass().getSimpleName()
                    + "); check the folder, and that no other program has it open");
        } catch (NotKeptException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    /** What {@code stock export --json} prints. */
    record StockExported(String file, int units) {}
}
