package fencerow.content;

import java.io.IOException;
import java.io.StringReader;
import java.io.UncheckedIOException;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.Iterator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;
import org.apache.commons.csv.CSVFormat;
import org.apache.commons.csv.CSVParser;
import org.apache.commons.csv.CSVRecord;

/** Turns a comma-separated table into rows that know their lines. Empty rows and rows that start with # are skipped. */
final class CsvFile {
    private static final int MOST_ROWS = 100_000;

    private CsvFile() {}

    /** The rows of a table and whether all of it could be read. */
    record Table(List<CsvRow> rows, boolean complete) {}

    private record Line(Place place, List<String> cells) {
        boolean counts() {
            return !cells.stream().allMatch(String::isBlank) && !cells.get(0).startsWith("#");
        }
    }

    /**
     * Reads a table; the first row names the columns.
     *
     * @param needed  columns that must be there
     * @param allowed says of any other column whether it may be there
     * @param known   all words that can name a column, for advice
     */
    static Table read(
            SourceFile file, List<String> needed, Predicate<String> allowed, List<String> known, Problems problems) {
        int before = problems.count();
        List<Line> lines = lines(file, problems);
        if (lines.isEmpty()) {
            problems.error(file.at(1), "the table has no rows", "add a first row with the names of the columns");
            return new Table(List.of(), false);
        }
        Line head = lines.get(0);
        checkHead(head, needed, allowed, known, problems);
        if (problems.count() > before) {
            return new Table(List.of(), false);
        }
        List<CsvRow> rows = new ArrayList<>();
        for (Line line : lines.subList(1, lines.size())) {
            if (line.cells().size() != head.cells().size()) {
                problems.error(line.place(), "the row has " + line.cells().size() + " cells, the first row has "
                        + head.cells().size(), "add or delete commas; put quotes around a cell that holds a comma");
                continue;
            }
            Map<String, String> cells = new LinkedHashMap<>();
            for (int i = 0; i < head.cells().size(); i++) {
                cells.put(head.cells().get(i), line.cells().get(i));
            }
            rows.add(new CsvRow(line.place(), cells, problems));
        }
        return new Table(rows, problems.count() == before);
    }

    private static void checkHead(
            Line head, List<String> needed, Predicate<String> allowed, List<String> known, Problems problems) {
        List<String> seen = new ArrayList<>();
        Set<String> meant = new HashSet<>();
        for (String column : head.cells()) {
            if (seen.contains(column)) {
                problems.error(head.place(), "the column [" + column + "] is there twice", "delete one of them");
            } else if (!needed.contains(column) && !allowed.test(column)) {
                problems.error(head.place(), "the column [" + column + "] is not known",
                        Nearest.advice(column, known, "delete or rename it"));
                Nearest.of(column, known).ifPresent(meant::add);
            }
            seen.add(column);
        }
        for (String column : needed) {
            if (!seen.contains(column) && !meant.contains(column)) {
                problems.error(head.place(), "the column [" + column + "] is missing", "add it to the first row");
            }
        }
    }

    private static List<Line> lines(SourceFile file, Problems problems) {
        CSVFormat format = CSVFormat.RFC4180.builder().setIgnoreEmptyLines(false).get();
        List<Line> lines = new ArrayList<>();
        int start = 1;
        try (CSVParser parser = CSVParser.builder()
                .setReader(new StringReader(file.text()))
                .setFormat(format)
                .get()) {
            Iterator<CSVRecord> records = parser.iterator();
            while (records.hasNext()) {
                List<String> cells = records.next().stream().map(String::strip).toList();
                var line = new Line(file.at(start), cells);
                if (line.counts()) {
                    lines.add(line);
                }
                if (lines.size() > MOST_ROWS) {
                    problems.error(line.place(), "the table has more than " + MOST_ROWS + " rows", "split it");
                    break;
                }
                start = (int) parser.getCurrentLineNumber() + 1;
            }
        } catch (IOException | UncheckedIOException | IllegalStateException e) {
            problems.error(file.at(start), "the quotes in this row do not match",
                    "put quotes around the whole cell, and write a quote within it twice");
        }
        return lines;
    }

    /** The text of a cell that is not blank. */
    static Optional<String> filled(String cell) {
        return cell.isBlank() ? Optional.empty() : Optional.of(cell);
    }
}
