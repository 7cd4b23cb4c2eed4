package fencerow.backoffice;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.backoffice.document.StockImportDocument;
import fencerow.desk.Edit;
import fencerow.desk.Sale;
import fencerow.storage.Store;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Stock lists in and out by the command line. */
class StockCommandTest {
    private static final String LIST = """
            id,model,condition,status,asking,loader
            t-1,nettle-19,new,in-stock,9000,yes
            t-2,nettle-24,used,in-stock,8000,unknown
            """;

    @TempDir
    Path folder;

    private Path list(String text) throws IOException {
        return Files.writeString(folder.resolve("list.csv"), text);
    }

    private Run run(String... arguments) {
        return Run.in(folder.resolve("data"), arguments);
    }

    private StockImportDocument take(Path file, String... more) {
        var arguments = new ArrayList<>(List.of("stock", "import", "--json", file.toString()));
        arguments.addAll(List.of(more));
        return run(arguments.toArray(String[]::new)).document(StockImportDocument.class);
    }

    @Test
    void whatIsExportedImportsBackWithoutAChangeAndExportsTheSameAgain() throws IOException {
        run("stock", "import", "kiosk-config/stock.csv");
        for (String name : new String[] {"out.csv", "out.xlsx"}) {
            Path out = folder.resolve(name);
            run("stock", "export", out.toString()).fine();
            StockImportDocument back = take(out);
            assertEquals(55, back.same(), back.toString());
            assertEquals(0, back.added() + back.changed() + back.removed() + back.wrong(), back.toString());
        }
        Path again = folder.resolve("again.csv");
        run("stock", "export", again.toString()).fine();
        assertEquals(Files.readString(folder.resolve("out.csv")), Files.readString(again));
    }

    @Test
    void aDryRunSaysWhatWouldBeAndChangesNothing() throws IOException {
        StockImportDocument dry = take(list(LIST), "--dry-run");
        assertEquals(2, dry.added());
        assertFalse(dry.kept());
        assertEquals(2, take(list(LIST)).added());
    }

    @Test
    void oneWrongRowKeepsAllOutUnlessToldOtherwise() throws IOException {
        Path list = list(LIST.replace("8000", "cheap"));
        Run refused = run("stock", "import", list.toString());
        assertEquals(FencerowCommand.NOT_FINE, refused.code());
        assertTrue(refused.out().contains("list.csv:3: column [asking]: [cheap] is no whole number"), refused.out());
        assertTrue(refused.out().contains("Nothing was changed"), refused.out());
        StockImportDocument partly = take(list, "--partly");
        assertTrue(partly.kept());
        assertEquals(1, partly.added());
        assertEquals(1, partly.wrong());
    }

    @Test
    void unitsThatTheFileNoLongerBringsGoOnlyWhenAskedTo() throws IOException {
        take(list(LIST));
        Path shorter = list(LIST.replaceAll("t-2.*\n", ""));
        assertEquals(0, take(shorter).removed());
        assertEquals(1, take(shorter, "--replace").removed());
    }

    @Test
    void whatAColumnMeansIsRememberedForTheNextTime() throws IOException {
        Path list = list(LIST.replace("asking", "Sticker"));
        assertFalse(take(list).kept());
        assertTrue(take(list, "--column", "Sticker=asking").kept());
        assertTrue(take(list).kept());
    }

    @Test
    void aDataFolderThatCannotBeIsSaid() throws IOException {
        Path file = list(LIST);
        Run run = Run.in(file.resolve("data"), "stock", "export", folder.resolve("x.csv").toString());
        run.failed(FencerowCommand.NOT_FINE);
        assertTrue(run.err().contains("let this user write there"), run.err());
        run("stock").failed(FencerowCommand.WRONG_USE);
    }

    @Test
    void aUnitSoldInTheStockBookIsMatchedNoLongerUnlessAListIsAskedForByName() throws Exception {
        run("stock", "import", "kiosk-config/stock.csv").fine();
        try (Store store = Store.open(folder.resolve("data"), Clock.systemUTC())) {
            store.stock().edit(Edit.sale(store.stock().find(new UnitId("n-201")).orElseThrow(),
                    new Sale.Sold(LocalDate.parse("2026-05-04"))));
        }
        String[] match = {"match", "--json", "--top", "60", "--answers", "src/test/resources/shoppers/long-drive.yaml"};
        Run book = run(match);
        assertEquals(FencerowCommand.FINE, book.code());
        assertFalse(book.out().contains("n-201"), "sold");
        assertTrue(book.err().contains("stock: 54 units of the stock book"), book.err());
        String[] list = Arrays.copyOf(match, match.length + 2);
        list[match.length] = "--stock";
        list[match.length + 1] = "kiosk-config/stock.csv";
        Run named = run(list).fine();
        assertTrue(named.out().contains("n-201"), "of the list");
    }
}
