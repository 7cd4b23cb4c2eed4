package fencerow.storage;

import fencerow.desk.Counter;
import fencerow.desk.Journal;
import fencerow.desk.Tally;
import java.time.LocalDate;
import java.util.Arrays;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The journal's table. */
final class SqlJournal implements Journal {
    private static final Map<String, Counter.Kind> KINDS =
            Arrays.stream(Counter.Kind.values()).collect(Collectors.toMap(Counter.Kind::id, Function.identity()));

    private final DatabaseFile file;

    SqlJournal(DatabaseFile file) {
        this.file = file;
    }

    @Override
    public void add(LocalDate day, Tally counts) {
        if (counts.counts().isEmpty()) {
            return;
        }
        file.write(handle -> {
            var batch = handle.prepareBatch("insert into journal (day, kind, subject, detail, total) "
                    + "values (:day, :kind, :subject, :detail, :total) "
                    + "on conflict (day, kind, subject, detail) do update set total = journal.total + excluded.total");
            counts.counts().forEach((counter, count) -> batch.bind("day", day.toString())
                    .bind("kind", counter.kind().id())
                    .bind("subject", counter.subject())
                    .bind("detail", counter.detail())
                    .bind("total", count)
                    .add());
            return batch.execute().length;
        });
    }

    @Override
    public Tally sum(LocalDate from, LocalDate to) {
        return file.read(handle -> {
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
                        return kind;
                    })
                    .list();
            return new Tally(sums);
        });
    }
}
