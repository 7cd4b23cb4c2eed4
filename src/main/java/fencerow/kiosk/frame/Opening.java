package fencerow.kiosk.frame;

import java.util.List;

/** What comes of reading the content when the kiosk starts. */
public sealed interface Opening {
    /** There is something to show. */
    record Open(Premises premises) implements Opening {}

    /**
     * There is nothing that can be shown, not even from an earlier day.
     *
     * @param problems each with file, line, what is wrong and what to do
     */
    record Closed(List<String> problems) implements Opening {
        /** Copies the list. */
        public Closed {
            problems = List.copyOf(problems);
        }
    }
}
