package fencerow.storage;

import fencerow.desk.NotKeptException;
import java.util.function.Function;
import org.jdbi.v3.core.Handle;

/** A database that the tables are in. May be used from any thread. */
interface Database {
    /** Reads: all statements see the same state. @throws NotKeptException if that cannot be done */
    <T> T read(Function<Handle, T> work);

    /**
     * Writes, all of it or nothing; one writer after the other.
     *
     * @throws NotKeptException if that cannot be done; then nothing was written, but where the server went away before
     *                          it could answer, which nobody can tell
     */
    <T> T write(Function<Handle, T> work);
}
