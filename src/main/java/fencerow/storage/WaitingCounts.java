package fencerow.storage;

import fencerow.desk.Tally;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.UUID;
import org.jdbi.v3.core.Handle;

/**
 * Counts on their way to the server, in a file of this kiosk's own: written here first, then handed in by parcels with
 * rising numbers. The server keeps the last number of each kiosk, so that a parcel whose receipt was lost is not
 * counted twice.
 */
final class WaitingCounts {
    static final String FILE = "waiting-counts.db";

    private static final System.Logger LOG = System.getLogger(WaitingCounts.class.getName());
    /** More than a year of a busy kiosk; then the oldest day goes. */
    private static final int MOST_ROWS = 100_000;

    private final DatabaseFile file;
    private final String kiosk;

    /** Makes the file if it is not there. @throws fencerow.desk.NotKeptException if it cannot be written */
    WaitingCounts(Path folder) {
        this.file = new DatabaseFile(folder.resolve(FILE));
        this.kiosk = file.write(handle -> {
            handle.execute("create table if not exists sender (kiosk text not null, batch integer not null)");
            handle.execute("create table if not exists waiting (batch integer not null, day text not null, "
                    + "kind text not null, subject text not null, detail text not null, total integer not null, "
                    + "primary key (batch, day, kind, subject, detail))");
            handle.execute("insert into sender (kiosk, batch) select ?, 1 where not exists (select 1 from sender)",
                    UUID.randomUUID().toString());
            return handle.createQuery("select kiosk from sender").mapTo(String.class).one();
        });
    }

    private record Parcel(long number, List<SqlJournal.Row> rows) {}

    /** The name under which this kiosk hands in. */
    String kiosk() {
        return kiosk;
    }

    /** Adds counts of a day. @throws fencerow.desk.NotKeptException if they cannot be kept; then none are added */
    void add(LocalDate day, Tally counts) {
        file.write(handle -> {
            var batch = handle.prepareBatch("insert into waiting (batch, day, kind, subject, detail, total) "
                    + "select batch, :day, :kind, :subject, :detail, :total from sender where true "
                    + "on conflict (batch, day, kind, subject, detail) "
                    + "do update set total = waiting.total + excluded.total");
            SqlJournal.Row.of(day, counts).forEach(row -> row.addTo(batch));
            batch.execute();
            return count(handle) > MOST_ROWS ? forgetOldest(handle) : 0;
        });
    }

    private static int forgetOldest(Handle handle) {
        LOG.log(System.Logger.Level.WARNING, "The server was away too long; the oldest day of counts is dropped");
        return handle.execute("delete from waiting where day = (select min(day) from waiting)");
    }

    /** Rows that wait. */
    long waiting() {
        return file.read(WaitingCounts::count);
    }

    private static long count(Handle handle) {
        return handle.createQuery("select count(*) from waiting").mapTo(Long.class).one();
    }

    /**
     * Hands in all that waits.
     *
     * @throws fencerow.desk.NotKeptException if that cannot be done; then it goes on waiting
     */
    synchronized void handIn(Database server) {
        Optional<Parcel> next = oldest();
        while (next.isPresent()) {
            Parcel parcel = next.get();
            server.write(handle -> {
                int isNew = handle.execute("insert into delivery (kiosk, batch) values (?, ?) on conflict (kiosk) "
                        + "do update set batch = excluded.batch where delivery.batch < excluded.batch",
                        kiosk, parcel.number());
                return isNew > 0 ? SqlJournal.add(handle, parcel.rows()) : 0;
            });
            file.write(handle -> handle.execute("delete from waiting where batch = ?", parcel.number()));
            next = oldest();
        }
    }

    /** The oldest parcel, closed: what is added from now on goes into the next one. */
    private Optional<Parcel> oldest() {
        if (file.read(WaitingCounts::count) == 0) {
            return Optional.empty();
        }
        return Optional.of(file.write(handle -> {
            handle.execute("update sender set batch = batch + 1 where batch = (select min(batch) from waiting)");
            long number = handle.createQuery("select min(batch) from waiting").mapTo(Long.class).one();
            return new Parcel(number, handle.createQuery(
                            "select day, kind, subject, detail, total from waiting where batch = :batch")
                    .bind("batch", number)
                    .map((row, context) -> new SqlJournal.Row(row.getString(1), row.getString(2), row.getString(3),
                            row.getString(4), row.getLong(5)))
                    .list());
        }));
    }
}
