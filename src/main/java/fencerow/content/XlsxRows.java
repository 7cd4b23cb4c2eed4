package fencerow.content;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Iterator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.dhatim.fastexcel.reader.Cell;
import org.dhatim.fastexcel.reader.CellType;
import org.dhatim.fastexcel.reader.ExcelReaderException;
import org.dhatim.fastexcel.reader.ReadableWorkbook;
import org.dhatim.fastexcel.reader.Row;

/** The rows of a workbook's first sheet (ECMA-376). The file is looked through by {@link SafeZip} before it is read. */
final class XlsxRows implements TableRows {
    private final ReadableWorkbook workbook;
    private final Stream<Row> stream;
    private final Iterator<Row> rows;
    private int last;

    XlsxRows(Path file) throws IOException, UnreadableTableException {
        SafeZip.check(file);
        try {
            this.workbook = new ReadableWorkbook(file.toFile());
            this.stream = workbook.getFirstSheet().openStream();
            this.rows = stream.iterator();
        } catch (ExcelReaderException | UncheckedIOException e) {
            throw broken(e);
        }
    }

    private UnreadableTableException broken(RuntimeException e) {
        return new UnreadableTableException(last + 1, "the workbook is broken (" + e.getClass().getSimpleName() + ")",
                "open it in a spreadsheet program and save it again as XLSX, or as CSV");
    }

    @Override
    public Optional<TableRows.Line> next() throws UnreadableTableException {
        Row row;
        try {
            if (!rows.hasNext()) {
                return Optional.empty();
            }
            row = rows.next();
        } catch (ExcelReaderException | UncheckedIOException | IllegalArgumentException
                | IndexOutOfBoundsException e) {
            throw broken(e);
        }
        last = row.getRowNum();
        List<String> cells = new ArrayList<>();
        for (int i = 0; i < Math.min(row.getCellCount(), MOST_CELLS + 1); i++) {
            Optional<Cell> cell = row.getOptionalCell(i);
            cells.add(cell.isPresent() ? text(cell.get()) : "");
        }
        return Optional.of(TableRows.checked(last, cells));
    }

    private String text(Cell cell) throws UnreadableTableException {
        CellType type = cell.getType();
        if (type == CellType.FORMULA || type == CellType.ERROR) {
            throw new UnreadableTableException(last, "cell " + cell.getAddress() + " holds "
                    + (type == CellType.FORMULA ? "a formula" : "an error"), "write its value in its place");
        }
        if (type == CellType.NUMBER && cell.getValue() instanceof BigDecimal number) {
            return number.signum() == 0 ? "0" : number.stripTrailingZeros().toPlainString();
        }
        if (type == CellType.BOOLEAN) {
            return Boolean.TRUE.equals(cell.getValue()) ? "yes" : "no";
        }
        return type == CellType.EMPTY ? "" : cell.getText().strip();
    }

    @Override
    public void close() throws IOException {
        try (workbook; stream) {
            last = 0;
        }
    }
}
