package fencerow.content;

import java.util.List;

/**
 * What a reading came to.
 *
 * @param <T> what was to be read
 */
public sealed interface Reading<T> {
    /**
     * It can be used.
     *
     * @param content  what was read
     * @param warnings what looks wrong all the same, by file and line
     */
    record Good<T>(T content, List<Problem> warnings) implements Reading<T> {
        /** Copies the list. */
        public Good {
            warnings = List.copyOf(warnings);
        }
    }

    /**
     * It cannot be used.
     *
     * @param problems why, every one, by file and line; at least one
     * @param warnings what else looks wrong, by file and line
     */
    record Bad<T>(List<Problem> problems, List<Problem> warnings) implements Reading<T> {
        /** Copies the lists. */
        public Bad {
            problems = List.copyOf(problems);
            warnings = List.copyOf(warnings);
        }
    }

    /** What looks wrong without keeping anything from being used. */
    List<Problem> warnings();
}
