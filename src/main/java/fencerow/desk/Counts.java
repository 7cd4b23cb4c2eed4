package fencerow.desk;

import java.time.LocalDate;

/** What visits came to, as a kiosk hands it over and staff look at it. May be used from any thread. */
public interface Counts {
    /** Where there is no database: nothing is counted. */
    Counts NONE = new Counts() {
        @Override
        public void ended(Tally visit) {}

        @Override
        public Tally sum(LocalDate from, LocalDate to) {
            return Tally.NONE;
        }

        @Override
        public LocalDate today() {
            return LocalDate.EPOCH;
        }
    };

    /** A visit ended. What cannot be kept now is kept with the next. */
    void ended(Tally visit);

    /**
     * What visits of some days came to together.
     *
     * @throws NotKeptException if the database cannot be read
     */
    Tally sum(LocalDate from, LocalDate to);

    /** The day it is. */
    LocalDate today();
}
