package fencerow.desk;

import java.time.LocalDate;

/**
 * Anonymous counts by day. Only sums of several visits are ever written (see {@link VisitBook}), so that no visit can
 * be rebuilt from it. May be used from any thread.
 */
public interface Journal {
    /** Adds counts to those of a day. @throws NotKeptException if the database cannot keep them; then none are added */
    void add(LocalDate day, Tally counts);

    /**
     * The counts of some days together.
     *
     * @param from the first day
     * @param to   the last day
     */
    Tally sum(LocalDate from, LocalDate to);
}
