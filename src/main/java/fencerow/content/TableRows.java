package fencerow.content;

import java.io.Closeable;
import java.io.IOException;
import java.util.List;
import java.util.Optional;

/** The rows of a table in a file, one after the other, so that a long file is never in memory whole. */
interface TableRows extends Closeable {
    /** The most rows that are read. */
    int MOST_ROWS = 200_000;

    /** The most cells in a row. */
    int MOST_CELLS = 500;

    /** The most characters in a cell. */
    int MOST_CHARACTERS = 2_000;

    /**
     * One row.
     *
     * @param number in the file, from 1: a line where the file is text
     * @param cells  without the blanks around them
     */
    record Line(int number, List<String> cells) {
        boolean isBlank() {
            return cells.stream().allMatch(String::isBlank);
        }
    }

    /**
     * The next row; empty at the end.
     *
     * @throws UnreadableTableException if the rest cannot be read
     */
    Optional<Line> next() throws IOException, UnreadableTableException;

    /** The file cannot be read as a table from some row on. */
    final class UnreadableTableException extends Exception {
        private final int row;
        private final String whatToDo;

        UnreadableTableException(int row, String what, String whatToDo) {
            super(what);
            this.row = row;
            this.whatToDo = whatToDo;
        }

        Problem problem(String file) {
            return new Problem(new Place(file, Math.max(1, row)), String.valueOf(getMessage()), whatToDo);
        }
    }

    /** The row, unless it is too wide or one of its cells too long. */
    static Line checked(int number, List<String> cells) throws UnreadableTableException {
        if (number > MOST_ROWS) {
            throw new UnreadableTableException(number, "the table has more than " + MOST_ROWS + " rows", "split it");
        }
        if (cells.size() > MOST_CELLS) {
            throw new UnreadableTableException(number, "the row has " + cells.size() + " cells",
                    MOST_CELLS + " are the most; delete what lies to the right of the table");
        }
        for (String cell : cells) {
            if (cell.length() > MOST_CHARACTERS) {
                throw new UnreadableTableException(number, "a cell has " + cell.length() + " characters",
                        MOST_CHARACTERS + " are the most; check that quotes match");
            }
            if (cell.chars().anyMatch(c -> Character.isISOControl(c) && c != '\t')) {
                throw new UnreadableTableException(number, "a cell holds a line break or an invisible character",
                        "delete it");
            }
        }
        return new Line(number, cells);
    }
}
