package fencerow.backoffice;

import fencerow.backoffice.document.StockImportDocument;
import fencerow.content.StockFile;
import fencerow.desk.Memory;
import fencerow.desk.NotKeptException;
import fencerow.desk.StockBook;
import fencerow.desk.StockRow;
import fencerow.storage.Store;
import fencerow.terms.Feature;
import fencerow.terms.UnitId;
import fencerow.wording.Texts;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.concurrent.Callable;
import picocli.CommandLine.Command;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;

/** Takes a stock list into the stock book. */
@Command(name = "import", mixinStandardHelpOptions = true,
        description = "Takes a stock list (CSV or XLSX) into the stock book: all of it, or nothing if a row is wrong.")
final class StockImportCommand implements Callable<Integer> {
    private static final int TELL_EVERY = 10_000;

    private final FencerowCommand top;

    @Parameters(paramLabel = "FILE", description = "The stock list; its first row names the columns.")
    private Path file = Path.of("");

    @Option(names = "--dry-run", description = "Only say what would be taken in, and what is wrong.")
    private boolean dryRun;

    @Option(names = "--partly", description = "Take in the rows that are good even if others are wrong.")
    private boolean partly;

    @Option(names = "--replace",
            description = "Take out units that an earlier file brought and this one does not. Units added in the"
                    + " kiosk stay.")
    private boolean replace;

    @Option(names = "--column", paramLabel = "NAME=COLUMN",
            description = "Which of our columns the file means by NAME; nothing after the equals sign leaves it out."
                    + " Remembered for the next time.")
    private Map<String, String> columns = new LinkedHashMap<>();

    StockImportCommand(FencerowCommand top) {
        this.top = top;
    }

    @Override
    public Integer call() throws UnreadableException, WrongUseException, FailedException {
        Premises premises = top.open();
        try (Store store = top.openStore()) {
            var told = new HashMap<>(store.memory().columns());
            told.putAll(columns);
            StockFile reader = new StockFile(premises.content().units(), told, titles(premises));
            StockBook book = store.stock();
            List<StockFile.Read> read = new ArrayList<>();
            StockBook.TakenIn taken = book.take(replace, intake -> {
                read.add(reader.read(file, rows(book), intake, this::progress));
                return !dryRun && (read.get(0).isGood() || partly && read.get(0).rows() > read.get(0).wrong());
            });
            if (taken.kept()) {
                remember(store.memory());
            }
            var document = StockImportDocument.of(file, read.get(0), taken, dryRun);
            top.print(document, () -> StockImportText.of(document));
            return read.get(0).isGood() ? FencerowCommand.FINE : FencerowCommand.NOT_FINE;
        } catch (NotKeptException e) {
            throw new FailedException(String.valueOf(e.getMessage()));
        }
    }

    private void remember(Memory memory) {
        memory.rememberColumns(columns);
    }

    private void progress(int rows) {
        if (rows % TELL_EVERY == 0 && rows > 0) {
            top.surroundings().err().println(rows + " rows ...");
            top.surroundings().err().flush();
        }
    }

    private static Map<UnitId, StockRow> rows(StockBook book) {
        Map<UnitId, StockRow> rows = new HashMap<>();
        book.entries().forEach(entry -> rows.put(entry.row().id(), entry.row()));
        return rows;
    }

    private static Map<String, String> titles(Premises premises) {
        Texts texts = premises.texts();
        Map<String, String> titles = new HashMap<>();
        for (Feature feature : premises.showroom().catalogue().features()) {
            texts.find("feature." + feature.id() + ".name")
                    .ifPresent(name -> titles.put(name, feature.id().value()));
        }
        return titles;
    }
}
