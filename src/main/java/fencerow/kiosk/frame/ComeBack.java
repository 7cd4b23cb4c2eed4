package fencerow.kiosk.frame;

import fencerow.desk.ComeBackCode;
import fencerow.desk.NotKeptException;
import fencerow.visit.Remembered;
import fencerow.visit.ReturnCode;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import java.time.Duration;
import java.util.Optional;

/** Keeps a visit for who wants to go on with it another day, when they ask for it. Called in the background. */
public interface ComeBack {
    /** How many days a visit is kept. */
    int days();

    /**
     * Keeps the visit, sealed under a new code that nobody but the shopper has.
     *
     * @return the code; empty if so many were made within the hour that no more are now
     * @throws NotKeptException if the database cannot keep it
     */
    Optional<ReturnCode> keep(Visit visit);

    /**
     * Looks for the visit of a code.
     *
     * @param showroom in which it goes on
     * @throws NotKeptException if the database cannot be read
     */
    Found find(ComeBackCode code, Showroom showroom);

    /** What comes of it. */
    sealed interface Found {
        /** The visit is back. */
        record Back(Remembered remembered) implements Found {}

        /** Nothing is kept under the code, or no longer. */
        record Nothing() implements Found {}

        /** So many codes were wrong that none is tried for a while. */
        record Wait(Duration left) implements Found {}
    }
}
