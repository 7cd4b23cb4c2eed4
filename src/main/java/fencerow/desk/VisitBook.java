package fencerow.desk;

import java.time.Clock;
import java.time.LocalDate;

/**
 * Takes what visits come to and writes it into the journal three visits at a time: the database never holds, and never
 * gets in one piece, what one visit alone came to. Up to two visits are lost when the kiosk stops.
 */
public final class VisitBook {
    /** Fewest visits that are written together, and the smallest count that is shown. */
    public static final int FEWEST = 3;

    private static final int MOST_WAITING = 1_000;

    private final Journal journal;
    private final Clock clock;
    private Tally waiting = Tally.NONE;
    private int visits;

    /** Writes into the journal, on the day it is then. */
    public VisitBook(Journal journal, Clock clock) {
        this.journal = journal;
        this.clock = clock;
    }

    /**
     * A visit ended.
     *
     * @throws NotKeptException if the database does not take the counts; they are kept for the next visit's end, as
     *                          long as that are not more than a thousand visits
     */
    public synchronized void ended(Tally visit) {
        if (visits < MOST_WAITING) {
            waiting = waiting.plus(visit);
            visits++;
        }
        if (visits >= FEWEST) {
            journal.add(LocalDate.now(clock), waiting);
            waiting = Tally.NONE;
            visits = 0;
        }
    }
}
