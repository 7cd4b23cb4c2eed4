package fencerow.content;

import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Supplier;

/**
 * Collects what one reading finds wrong, so that reading can go on to the next thing. Readers put a stand-in for what
 * they could not read; a record is made only of things that were all read, see {@link #make}.
 */
final class Problems {
    private final TreeSet<Problem> errors = new TreeSet<>();
    private final TreeSet<Problem> warnings = new TreeSet<>();
    private final TreeSet<String> columns = new TreeSet<>();
    private int count;

    /** Something because of which the content cannot be used. */
    void error(Place place, String what, String whatToDo) {
        errors.add(new Problem(place, what, whatToDo));
        count++;
    }

    /** The same in a cell of a table. */
    void error(Place place, String column, String what, String whatToDo) {
        columns.add(column);
        error(place, "column [" + column + "]: " + what, whatToDo);
    }

    /** Something that looks wrong and can be used all the same. */
    void warning(Place place, String what, String whatToDo) {
        warnings.add(new Problem(place, what, whatToDo));
    }

    /** An error told by an exception whose message says what is wrong; then, after a semicolon, what to do. */
    void error(Place place, IllegalArgumentException e) {
        String message = String.valueOf(e.getMessage());
        int cut = message.lastIndexOf("; ");
        if (cut < 0) {
            error(place, message, "correct it");
        } else {
            error(place, message.substring(0, cut), message.substring(cut + 2));
        }
    }

    /** How many errors were reported so far, equal ones counted each time. */
    int count() {
        return count;
    }

    /** Makes a record, unless an error was reported since the count was {@code before}: then parts are stand-ins. */
    <T> Optional<T> make(Place place, int before, Supplier<T> maker) {
        if (count > before) {
            return Optional.empty();
        }
        try {
            return Optional.of(maker.get());
        } catch (IllegalArgumentException e) {
            error(place, e);
            return Optional.empty();
        }
    }

    /** All errors by file and line. */
    List<Problem> errors() {
        return List.copyOf(errors);
    }

    /** All warnings by file and line. */
    List<Problem> warnings() {
        return List.copyOf(warnings);
    }

    /** An error told without its column is in this one. */
    void isIn(String column) {
        columns.add(column);
    }

    /** Columns in whose cells errors were found. */
    Set<String> columns() {
        return Set.copyOf(columns);
    }

    boolean hasErrors() {
        return !errors.isEmpty();
    }
}
