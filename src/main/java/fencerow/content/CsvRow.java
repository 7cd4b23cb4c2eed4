package fencerow.content;

import fencerow.terms.Money;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.function.Function;

/** One row of a table. Accessors report a cell they cannot read, with its column, and give a stand-in. */
record CsvRow(Place place, Map<String, String> cells, Problems problems) {
    static final int MOST_DOLLARS = 10_000_000;

    /** What is wrong with one cell of this row. */
    void error(String column, String what, String whatToDo) {
        problems.error(place, column, what, whatToDo);
    }

    void warning(String column, String what, String whatToDo) {
        problems.warning(place, "column [" + column + "]: " + what, whatToDo);
    }

    /** The cell's text, if anything is in it. */
    Optional<String> find(String column) {
        return CsvFile.filled(cells.getOrDefault(column, ""));
    }

    /** The text of a cell that must be filled. */
    String text(String column) {
        Optional<String> text = find(column);
        if (text.isEmpty()) {
            error(column, "the cell is empty", "fill it in");
        }
        return text.orElse("");
    }

    /** One of some words; the first where the cell is wrong. */
    <E> E choice(String column, E[] values, Function<E, String> word) {
        String text = text(column);
        List<String> words = List.of(values).stream().map(word).toList();
        int index = words.indexOf(text);
        if (index < 0 && !text.isEmpty()) {
            error(column, "[" + text + "] is none of the words that can stand here",
                    "use one of " + String.join(", ", words));
        }
        return values[Math.max(0, index)];
    }

    /** A whole number between bounds, if the cell is filled. */
    OptionalInt findWhole(String column, int least, int most) {
        Optional<String> text = find(column);
        if (text.isEmpty()) {
            return OptionalInt.empty();
        }
        try {
            int number = Integer.parseInt(text.get());
            if (number >= least && number <= most) {
                return OptionalInt.of(number);
            }
            if (number < 0 && least == 0) {
                error(column, "[" + text.get() + "] is negative", "write 0 or more");
                return OptionalInt.empty();
            }
        } catch (NumberFormatException e) {
            error(column, "[" + text.get() + "] is no whole number",
                    "write digits only, from " + least + " to " + most);
            return OptionalInt.empty();
        }
        error(column, "[" + text.get() + "] is out of range", "write a number from " + least + " to " + most);
        return OptionalInt.empty();
    }

    /** Whole dollars, if the cell is filled. */
    Optional<Money> findDollars(String column) {
        OptionalInt dollars = findWhole(column, 0, MOST_DOLLARS);
        return dollars.isPresent() ? Optional.of(Money.ofDollars((long) dollars.getAsInt())) : Optional.empty();
    }

    /** IdLists separated by blanks. */
    List<String> words(String column) {
        return find(column).map(text -> List.of(text.split("\\s+", -1))).orElse(List.of());
    }
}
