package fencerow.content;

import fencerow.desk.StockRow;
import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/** Writes the stock list so that {@link StockFile} reads the same units from it. */
public final class StockExport {
    private static final int FLUSH_EVERY = 1_000;

    private final List<String> columns;

    /** Writes the columns that the content knows. */
    public StockExport(UnitReader reader) {
        this.columns = reader.columns();
    }

    /**
     * Writes the rows into a file: XLSX by the end of its name, else CSV. An older file of the name is there, whole,
     * until the new one is.
     *
     * @throws IOException if it cannot be written
     */
    public void write(Path file, List<StockRow> rows) throws IOException {
        Path name = file.getFileName();
        if (name == null) {
            throw new IOException(file + " is no file name");
        }
        Path unfinished = file.resolveSibling(name + ".unfinished");
        try (OutputStream out = Files.newOutputStream(unfinished)) {
            if (name.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
                xlsx(out, rows);
            } else {
                csv(out, rows);
            }
        } catch (IOException e) {
            Files.deleteIfExists(unfinished);
            throw e;
        }
        Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private List<String> cells(StockRow row) {
        List<String> cells = new ArrayList<>();
        for (String column : columns) {
            String text = column.equals("id") ? row.id().value() : row.find(column).orElse("");
            cells.add(CellText.written(text));
        }
        return cells;
    }

    private void csv(OutputStream out, List<StockRow> rows) throws IOException {
        var writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        try (var printer = new CSVPrinter(writer, CSVFormat.RFC4180)) {
            printer.printRecord(columns);
            for (StockRow row : rows) {
                printer.printRecord(cells(row));
            }
        }
    }

    private void xlsx(OutputStream out, List<StockRow> rows) throws IOException {
        try (var workbook = new Workbook(out, "Fencerow", "1.0")) {
            Worksheet sheet = workbook.newWorksheet("Stock");
            write(sheet, 0, columns);
            for (int i = 0; i < rows.size(); i++) {
                write(sheet, i + 1, cells(rows.get(i)));
                if (i % FLUSH_EVERY == 0) {
                    sheet.flush();
                }
            }
        }
    }

    private static void write(Worksheet sheet, int row, List<String> cells) {
        for (int column = 0; column < cells.size(); column++) {
            if (!cells.get(column).isEmpty()) {
                sheet.inlineString(row, column, cells.get(column));
            }
        }
    }
}
