package fencerow.content;

import fencerow.content.TableRows.UnreadableTableException;
import fencerow.desk.StockBook;
import fencerow.desk.StockRow;
import fencerow.terms.UnitId;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.function.IntConsumer;

/**
 * Reads stock lists from elsewhere, as CSV or XLSX, row by row: matches columns by name, says what is wrong in which
 * row and column, and puts the rows that can be used into an intake. Writing them is {@link StockExport}'s.
 */
public final class StockFile {
    /** The most problems that are told; a list that is wrong in every row is wrong in one way. */
    public static final int MOST_PROBLEMS = 200;

    private static final int TELL_EVERY = 1_000;
    private static final Set<String> ID_LIKE = Set.of("model", "condition", "status");

    private final UnitReader reader;
    private final StockColumns columns;

    /**
     * Reads against the content.
     *
     * @param told   what people said they mean by a column, by the name they wrote; blank for one to leave out
     * @param titles names of equipment as shown, and its columns
     */
    public StockFile(UnitReader reader, Map<String, String> told, Map<String, String> titles) {
        this.reader = reader;
        this.columns = new StockColumns(reader, told, titles);
    }

    /**
     * What a file came to.
     *
     * @param rows       units in it
     * @param wrong      those that cannot be used
     * @param understood columns that were taken to mean one of another name; blank for ones left out
     * @param problems   the first of them, each with file, row, column, what is wrong and what may stand there
     * @param warnings   what looks wrong all the same, likewise
     */
    public record Read(
            int rows, int wrong, Map<String, String> understood, List<Problem> problems, List<Problem> warnings) {
        /** Copies the collections. */
        public Read {
            understood = Map.copyOf(understood);
            problems = List.copyOf(problems);
            warnings = List.copyOf(warnings);
        }

        /** Whether every row can be used. */
        public boolean isGood() {
            return problems.isEmpty();
        }
    }

    /**
     * Reads a file.
     *
     * @param before   the units as they are now; a row that leaves columns out is judged with these
     * @param intake   gets the rows that can be used
     * @param progress told how many rows are done, now and then
     */
    public Read read(Path file, Map<UnitId, StockRow> before, StockBook.Intake intake, IntConsumer progress) {
        String name = String.valueOf(file.getFileName());
        var run = new Run(name, before, intake);
        try (TableRows rows = open(file)) {
            Optional<TableRows.Line> head = firstFilled(rows);
            if (head.isEmpty()) {
                run.problems.error(new Place(name, 1), "the table has no rows", "start it with the columns' names");
                return run.result(Map.of());
            }
            Optional<List<String>> matched = columns.match(head.get(), name, run.problems);
            if (matched.isEmpty()) {
                return run.result(Map.of());
            }
            try {
                for (Optional<TableRows.Line> row = rows.next(); row.isPresent(); row = rows.next()) {
                    run.take(row.get(), matched.get());
                    if (run.rows % TELL_EVERY == 0) {
                        progress.accept(run.rows);
                    }
                }
            } catch (UnreadableTableException e) {
                run.tell(e.problem(name));
            }
            return run.result(StockColumns.understood(head.get(), matched.get()));
        } catch (UnreadableTableException e) {
            run.tell(e.problem(name));
        } catch (IOException e) {
            run.tell(new Problem(new Place(name, 1), "the file cannot be read (" + e.getClass().getSimpleName() + ")",
                    "check that it is there and that this user may read it"));
        }
        return run.result(Map.of());
    }

    private static TableRows open(Path file) throws IOException, UnreadableTableException {
        boolean xlsx = file.toString().toLowerCase(Locale.ROOT).endsWith(".xlsx");
        if (!Files.isRegularFile(file)) {
            throw new UnreadableTableException(1, "there is no such file", "check its name");
        }
        return xlsx ? new XlsxRows(file) : new CsvRows(file);
    }

    private static Optional<TableRows.Line> firstFilled(TableRows rows) throws IOException, UnreadableTableException {
        Optional<TableRows.Line> row = rows.next();
        while (row.isPresent() && isSkipped(row.get())) {
            row = rows.next();
        }
        return row;
    }

    private static boolean isSkipped(TableRows.Line row) {
        return row.isBlank() || row.cells().get(0).startsWith("#");
    }

    /** One reading on its way. */
    private final class Run {
        private final String name;
        private final Map<UnitId, StockRow> before;
        private final StockBook.Intake intake;
        private final Problems problems = new Problems();
        private final Set<String> seen = new HashSet<>();
        private int rows;
        private int wrong;
        private int warned;

        Run(String name, Map<UnitId, StockRow> before, StockBook.Intake intake) {
            this.name = name;
            this.before = before;
            this.intake = intake;
        }

        void tell(Problem problem) {
            problems.error(problem.place(), problem.what(), problem.whatToDo());
        }

        void take(TableRows.Line row, List<String> columns) {
            if (isSkipped(row)) {
                return;
            }
            rows++;
            var place = new Place(name, row.number());
            var told = new Problems();
            check(row, columns, place, told);
            if (told.hasErrors()) {
                wrong++;
            }
            if (problems.count() < MOST_PROBLEMS) {
                told.errors().forEach(this::tell);
            }
            if (warned < MOST_PROBLEMS) {
                told.warnings().forEach(each -> problems.warning(each.place(), each.what(), each.whatToDo()));
                warned += told.warnings().size();
            }
        }

        private void check(TableRows.Line row, List<String> columns, Place place, Problems told) {
            Map<String, String> cells = new HashMap<>();
            for (int i = 0; i < row.cells().size(); i++) {
                String column = i < columns.size() ? columns.get(i) : "";
                String text = CellText.taken(row.cells().get(i));
                if (!column.isEmpty()) {
                    cells.put(column, reader.isEquipment(column) || ID_LIKE.contains(column)
                            ? text.toLowerCase(Locale.ROOT) : text);
                } else if (i >= columns.size() && !text.isEmpty()) {
                    told.error(place, "the row has more cells than the first row", "delete what is too much");
                    return;
                }
            }
            String id = cells.getOrDefault("id", "");
            cells.remove("id");
            if (!seen.add(id)) {
                told.error(place, "column [id]: [" + id + "] stands in two rows", "delete one of them");
                return;
            }
            UnitId unit;
            try {
                unit = new UnitId(id);
            } catch (IllegalArgumentException e) {
                told.error(place, e);
                return;
            }
            // A blank cell of equipment says nothing: what staff saw at the machine stays.
            Set<String> said = new HashSet<>(columns);
            said.removeIf(column -> column.isEmpty() || reader.isEquipment(column) && cells.getOrDefault(column, "")
                    .isEmpty());
            Map<String, String> whole = new TreeMap<>();
            Optional.ofNullable(before.get(unit)).ifPresent(old -> whole.putAll(old.cells()));
            whole.keySet().removeAll(said);
            cells.forEach((column, text) -> {
                if (said.contains(column)) {
                    whole.put(column, text);
                }
            });
            if (reader.read(StockRow.of(unit, whole), place, told).isPresent() && !told.hasErrors()) {
                intake.put(StockRow.of(unit, cells), said);
            }
        }

        Read result(Map<String, String> understood) {
            return new Read(rows, wrong, understood, problems.errors(), problems.warnings());
        }
    }
}
