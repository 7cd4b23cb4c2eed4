package fencerow.content;

import java.io.IOException;
import java.io.OutputStream;
import java.io.OutputStreamWriter;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.Locale;
import java.util.function.Function;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVPrinter;
import org.dhatim.fastexcel.Workbook;
import org.dhatim.fastexcel.Worksheet;

/**
 * Writes a table into a file: XLSX by the end of its name, else CSV. No cell can be run as a formula, see
 * {@link CellText}.
 */
public final class TableFile {
    private static final int FLUSH_EVERY = 1_000;

    private TableFile() {}

    /**
     * Writes it. An older file of the name is there, whole, until the new one is.
     *
     * @param sheet   its name, where there are sheets
     * @param columns their names
     * @param rows    what each row is of
     * @param cells   the texts of one, as many as there are columns
     * @throws IOException if it cannot be written
     */
    public static <T> void write(
            Path file, String sheet, List<String> columns, List<T> rows, Function<T, List<String>> cells)
            throws IOException {
        Path name = file.getFileName();
        if (name == null) {
            throw new IOException(file + " is no file name");
        }
        Path unfinished = file.resolveSibling(name + ".unfinished");
        try (OutputStream out = Files.newOutputStream(unfinished)) {
            if (name.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx")) {
                xlsx(out, sheet, columns, rows, cells);
            } else {
                csv(out, columns, rows, cells);
            }
        } catch (IOException e) {
            Files.deleteIfExists(unfinished);
            throw e;
        }
        Files.move(unfinished, file, StandardCopyOption.REPLACE_EXISTING);
    }

    private static List<String> written(List<String> cells) {
        return cells.stream().map(CellText::written).toList();
    }

    private static <T> void csv(OutputStream out, List<String> columns, List<T> rows, Function<T, List<String>> cells)
            throws IOException {
        var writer = new OutputStreamWriter(out, StandardCharsets.UTF_8);
        try (var printer = new CSVPrinter(writer, CSVFormat.RFC4180)) {
            printer.printRecord(columns);
            for (T row : rows) {
                printer.printRecord(written(cells.apply(row)));
            }
        }
    }

    private static <T> void xlsx(
            OutputStream out, String name, List<String> columns, List<T> rows, Function<T, List<String>> cells)
            throws IOException {
        try (var workbook = new Workbook(out, "Fencerow", "1.0")) {
            Worksheet sheet = workbook.newWorksheet(name);
            write(sheet, 0, columns);
            for (int i = 0; i < rows.size(); i++) {
                write(sheet, i + 1, written(cells.apply(rows.get(i))));
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
