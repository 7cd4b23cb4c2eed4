package fencerow.storage;

import fencerow.desk.Counter;
import fencerow.desk.Journal;
import fencerow.desk.Tally;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.statement.PreparedBatch;

/** The journal's table. */
final class SqlJournal implements Journal {
    private static final Map<String, Counter.Kind> KINDS =
            Arrays.stream(Counter.Kind.values()).collect(Collectors.toMap(Counter.Kind::id, Function.identity()));

    private final Database database;

    SqlJournal(Database database) {
        this.database = database;
    }

    /** One row: a counter's total of a day. */
    record Row(String day, String kind, String subject, String detail, long total) {
        static List<Row> of(LocalDate day, Tally counts) {
            return counts.counts().entrySet().stream()
                    .map(count -> new Row(day.toString(), count.getKey().kind().id(), count.getKey().subject(),
                            count.getKey().detail(), count.getValue()))
                    .toList();
        }

        void addTo(PreparedBatch batch) {
            batch.bind("day", day).bind("kind", kind).bind("subject", subject).bind("detail", detail)
                    .bind("total", total).add();
        }
    }

    @Override
    public void add(LocalDate day, Tally counts) {
        if (!counts.counts().isEmpty()) {
            database.write(handle -> add(handle, Row.of(day, counts)));
        }
    }

    /** Adds to what is there. @return how many rows */
    static int add(Handle handle, List<Row> rows) {
        var batch = handle.prepareBatch("insert into journal (day, kind, subject, detail, total) "
                + "values (:day, :kind, :subject, :detail, :total) "
                + "on conflict (day, kind, subject, detail) do update set total = journal.total + excluded.total");
        rows.forEach(row -> row.addTo(batch));
        return batch.execute().length;
    }

    @Override
    public Tally sum(LocalDate from, LocalDate to) {
        return database.read(handle -> {
            var sums = new TreeMap<Counter, Long>();
            handle.createQuery("select kind, subject, detail, sum(total) as total from journal "
                            + "where day >= :from and day <= :to group by kind, subject, detail")
                    .bind("from", from.toString())
                    .bind("to", to.toString())
                    .map((row, context) -> {
                        Counter.Kind kind = KINDS.get(row.getString("kind"));
                        if (kind != null) {
                            // Counters of a newer version are none of ours.
                            sums.put(new Counter(kind, row.getString("subject"), row.getString("detail")),
                                    row.getLong("total"));
                        }
                        return row.getString("kind");
                    })
                    .list();
            return new Tally(sums);
        });
    }
}
