package fencerow.content;

import fencerow.desk.StockRow;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** Writes the stock list so that {@link StockFile} reads the same units from it. */
public final class StockExport {
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
        TableFile.write(file, "Stock", columns, rows, this::cells);
    }

    private List<String> cells(StockRow row) {
        return columns.stream()
                .map(column -> column.equals("id") ? row.id().value() : row.find(column).orElse(""))
                .toList();
    }
}
