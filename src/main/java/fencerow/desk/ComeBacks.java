package fencerow.desk;

import java.time.LocalDate;
import java.util.Optional;

/**
 * Where sealed visits lie. It can tell neither codes nor what is inside. May be used from any thread; every method
 * throws {@link NotKeptException} if the database cannot do it.
 */
public interface ComeBacks {
    /**
     * A sealed visit.
     *
     * @param handle  found by; derived from the code, which it does not give away
     * @param lastDay the last day it may be found
     * @param sealed  in base 64
     */
    record Row(String handle, LocalDate lastDay, String sealed) {}

    /** Keeps a row; one of the same handle gives way. */
    void keep(Row row);

    /** The row of a handle. */
    Optional<Row> findRow(String handle);

    /** Deletes the rows whose last day is before this one. @return how many there were */
    int forgetBefore(LocalDate day);
}
