package fencerow.backoffice.document;

import fencerow.content.Problem;
import fencerow.content.StockFile;
import fencerow.desk.StockBook;
import java.nio.file.Path;
import java.util.List;
import java.util.TreeMap;

/**
 * What {@code stock import} prints.
 *
 * @param file     that was read
 * @param kept     whether the stock book now says so; else nothing was changed
 * @param dryRun   whether it was only asked what would be
 * @param rows     units in the file
 * @param wrong    those that cannot be used
 * @param added    units that were not there
 * @param changed  units of which the file says something else
 * @param same     units as they were
 * @param removed  units that the file does not bring any more
 * @param columns  columns that were taken to mean one of another name
 * @param problems the first of them
 * @param warnings what looks wrong all the same
 */
public record StockImportDocument(
        String file,
        boolean kept,
        boolean dryRun,
        int rows,
        int wrong,
        int added,
        int changed,
        int same,
        int removed,
        List<ColumnEntry> columns,
        List<RowEntry> problems,
        List<RowEntry> warnings) {
    /** A column and what it was taken to mean; nothing for one left out. */
    public record ColumnEntry(String name, String means) {}

    /**
     * Something about one row.
     *
     * @param row      in the file, from 1
     * @param what     is wrong, with its column
     * @param whatToDo what may stand there
     */
    public record RowEntry(int row, String what, String whatToDo) {
        private static RowEntry of(Problem problem) {
            return new RowEntry(problem.place().line(), problem.what(), problem.whatToDo());
        }
    }

    /** Writes down what came of an import. */
    public static StockImportDocument of(Path file, StockFile.Read read, StockBook.TakenIn taken, boolean dryRun) {
        return new StockImportDocument(file.toString(), taken.kept(), dryRun, read.rows(), read.wrong(), taken.added(),
                taken.changed(), taken.same(), taken.removed(),
                new TreeMap<>(read.understood()).entrySet().stream()
                        .map(each -> new ColumnEntry(each.getKey(), each.getValue()))
                        .toList(),
                read.problems().stream().map(RowEntry::of).toList(),
                read.warnings().stream().map(RowEntry::of).toList());
    }
}
