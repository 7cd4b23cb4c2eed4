package fencerow.content;

import java.util.Comparator;

/**
 * Something wrong in a file.
 *
 * @param place    where
 * @param what     what is wrong
 * @param whatToDo how to put it right
 */
public record Problem(Place place, String what, String whatToDo) implements Comparable<Problem> {
    private static final Comparator<Problem> ORDER = Comparator.comparing(Problem::place)
            .thenComparing(Problem::what)
            .thenComparing(Problem::whatToDo);

    @Override
    public int compareTo(Problem other) {
        return ORDER.compare(this, other);
    }

    /** {@code file:line: what is wrong; what to do}. */
    @Override
    public String toString() {
        return place + ": " + what + "; " + whatToDo;
    }
}
