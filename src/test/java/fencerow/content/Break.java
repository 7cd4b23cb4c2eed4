package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.util.List;

/**
 * One way to break a file of the tiny showroom.
 *
 * @param old  stands in the file once
 * @param now  put in its place
 * @param at   what stands on the line that is named
 * @param says part of what is said of it
 */
record Break(String file, String old, String now, String at, String says) {
    /** A break that is named on the last line that was put in. */
    static Break broken(String file, String old, String now, String says) {
        String line = now.strip().lines().reduce((first, last) -> last).orElse(now);
        return new Break(file, old, now, line, says);
    }

    /** The same, named on another line: the first on which the text stands. */
    Break at(String text) {
        return new Break(file, old, now, text, says);
    }

    /** Breaks a copy of the files and holds that this is named, at its place, and nothing else is. */
    void check(Path folder) {
        TinyContent tiny = TinyContent.copyTo(folder).replace(file, old, now);
        List<Problem> problems = TinyContent.problems(tiny.read());
        assertEquals(1, problems.size(), () -> "one error expected of " + this + ", found " + problems);
        assertTrue(problems.get(0).toString().contains(says), () -> this + ": " + problems);
        if (!says.startsWith("no words for")) { // named at the record that needs them
            assertEquals(new Place(file, tiny.lineOf(file, at)), problems.get(0).place());
        }
    }

    @Override
    public String toString() {
        return file + ": " + says;
    }
}
