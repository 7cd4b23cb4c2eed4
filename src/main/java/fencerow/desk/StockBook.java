package fencerow.desk;

import fencerow.terms.UnitId;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.function.Predicate;

/**
 * The home of the units. Every change is recorded with its time and what stood there before and after. Whatever was
 * answered as kept is there after a power cut. May be used from any thread.
 *
 * <p>Where the database cannot read, methods throw a {@link NotKeptException}.
 */
public interface StockBook {
    /** All units, in the order of the stock list, sold ones included. */
    List<StockEntry> entries();

    /** The unit, if it is there. */
    Optional<StockEntry> find(UnitId unit);

    /** Changes one unit. */
    Edit.Outcome edit(Edit edit);

    /** Adds one unit; refused where one with the id is there. */
    Edit.Outcome add(StockRow row);

    /** The newest changes, newest first. */
    List<Edit.Recorded> changes(int most);

    /** Grows with every change of any unit; tells others that there is something new. */
    long revision();

    /**
     * Takes in many rows in one go: all of them, or none.
     *
     * @param replace whether units that an earlier file brought, and this one does not, are taken out
     * @param rows    puts the rows into the intake it is given; false drops everything again
     * @return what was taken in, or would have been
     * @throws NotKeptException if the database cannot keep it; then nothing was taken in
     */
    TakenIn take(boolean replace, Predicate<Intake> rows);

    /** Takes rows, one after the other. */
    interface Intake {
        /**
         * Takes one.
         *
         * @param row  as written
         * @param said columns that it speaks of; cells of other columns stay as they are
         */
        void put(StockRow row, Set<String> said);
    }

    /**
     * What an intake came to.
     *
     * @param added   units that were not there
     * @param changed units of which the file says something else
     * @param same    units as they were
     * @param removed units that the file does not bring any more
     * @param kept    whether it is in the book now
     */
    record TakenIn(int added, int changed, int same, int removed, boolean kept) {}
}
