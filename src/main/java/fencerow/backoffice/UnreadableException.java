package fencerow.backoffice;

import fencerow.content.Problem;
import fencerow.content.Reading;
import java.util.List;

/** Files that a command works on cannot be used. */
final class UnreadableException extends Exception {
    private final transient List<Problem> problems;

    /** @param problems every one, by file and line; at least one */
    UnreadableException(List<Problem> problems) {
        super(problems.size() + " problems, the first: " + problems.get(0));
        this.problems = List.copyOf(problems);
    }

    /** What was read, if it can be used. */
    static <T> T orGood(Reading<T> reading) throws UnreadableException {
        if (reading instanceof Reading.Bad<T> bad) {
            throw new UnreadableException(bad.problems());
        }
        return ((Reading.Good<T>) reading).content();
    }

    List<Problem> problems() {
        return problems;
    }
}
