package fencerow.content;

import fencerow.stock.Unit;
import java.util.ArrayList;
import java.util.List;

/** Reads {@code stock.csv}, or another stock list in its place. */
final class StockReader {
    private final Ids ids;
    private final UnitReader reader;

    StockReader(Ids ids, UnitReader reader) {
        this.ids = ids;
        this.reader = reader;
    }

    List<Unit> read(SourceFile file, Problems problems) {
        List<String> known = new ArrayList<>(UnitReader.COLUMNS);
        known.add(UnitReader.PICTURE);
        known.addAll(ids.all(Kind.FEATURE));
        CsvFile.Table table = CsvFile.read(file, UnitReader.COLUMNS,
                column -> column.equals(UnitReader.PICTURE) || ids.knows(Kind.FEATURE, column), known, problems);
        List<Unit> units = new ArrayList<>();
        for (CsvRow row : table.rows()) {
            int before = problems.count();
            row.find("id").ifPresent(id -> ids.declare(Kind.UNIT, id, row.place()));
            if (problems.count() == before) {
                reader.read(row).ifPresent(units::add);
            } else {
                reader.read(row);
            }
        }
        return units;
    }
}
