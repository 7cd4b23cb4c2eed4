package fencerow.storage;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.LocalDate;
import java.time.temporal.ChronoUnit;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.stream.Stream;
import org.jdbi.v3.core.Handle;

/**
 * A copy of what a kiosk shows from the server's data, in a file of its own: to go on with while the server is away. Of
 * the journal it has the last year's sums alone, of the changes the newest.
 */
final class LastSeen {
    static final String FILE = "server-copy.db";

    private static final String OTHER = "other-data-";
    private static final String TIME = "last-seen";
    /** Copied anew each time; the units are not. */
    private static final List<String> SMALL = List.of("instance", "revision", "memory", "column_name");

    private final Path folder;
    private final DatabaseFile file;
    private final Clock clock;
    private Optional<Mark> mark;
    private Optional<Instant> time;

    /** Looks what there is; a file that is no good is left to the next {@link #refresh}. */
    LastSeen(Path folder, Clock clock) {
        this.folder = folder;
        this.file = new DatabaseFile(folder.resolve(FILE));
        this.clock = clock;
        this.time = Optional.empty();
        this.mark = Optional.empty();
        if (Files.exists(file.path()) && file.isWhole() && Migrations.version(file.source()) == Migrations.NEWEST) {
            time = new SqlMemory(file).find(TIME).map(Instant::parse);
            mark = time.map(seen -> file.read(Mark::of));
        }
    }

    /** When the server was last seen to hold this; empty where there is no copy. */
    synchronized Optional<Instant> time() {
        return time;
    }

    synchronized Optional<Mark> mark() {
        return mark;
    }

    /** Reads; empty where there is no copy. */
    <T> Optional<T> read(Function<Handle, T> work) {
        return time().map(seen -> file.read(work));
    }

    /** Whether it is of an earlier day or of other data than these. */
    synchronized boolean isOld(Mark now) {
        return !mark.equals(Optional.of(now)) || !day(time.orElseThrow()).equals(day(clock.instant()));
    }

    private LocalDate day(Instant instant) {
        return instant.atZone(clock.getZone()).toLocalDate();
    }

    /** Copies anew what the server has. @throws fencerow.desk.NotKeptException if that cannot be done */
    void refresh(Database server) {
        if (Files.exists(file.path()) && !file.isWhole()) {
            delete();
        }
        Migrations.run(file);
        Instant now = clock.instant().truncatedTo(ChronoUnit.SECONDS);
        boolean newDay = time().filter(seen -> day(seen).equals(day(now))).isEmpty();
        Mark copied = server.read(from -> file.write(to -> {
            Tables.empty(to, SMALL);
            SMALL.forEach(table -> Tables.copy(from, "select * from " + table, to, table));
            copyUnits(from, to);
            to.execute("delete from unit_change");
            Tables.copy(from, "select * from unit_change where number = (select max(number) from unit_change)", to,
                    "unit_change");
            if (newDay) {
                to.execute("delete from journal");
                Tables.copy(from, "select max(day) as day, kind, subject, detail, sum(total) as total from journal "
                        + "where day >= ? group by kind, subject, detail", to, "journal",
                        day(now).minusYears(1).toString());
            }
            to.execute("insert into memory (name, content) values (?, ?) on conflict (name) do update set "
                    + "content = excluded.content", TIME, now.toString());
            return Mark.of(to);
        }));
        synchronized (this) {
            mark = Optional.of(copied);
            time = Optional.of(now);
        }
    }

    /** Only those that are different. */
    private static void copyUnits(Handle from, Handle to) {
        Map<String, String> there = states(from);
        Map<String, String> here = states(to);
        here.forEach((unit, state) -> {
            if (!state.equals(there.get(unit))) {
                to.execute("delete from unit where id = ?", unit);
            }
        });
        there.forEach((unit, state) -> {
            if (!state.equals(here.get(unit))) {
                Tables.copy(from, "select * from unit where id = ?", to, "unit", unit);
                Tables.copy(from, "select * from unit_cell where unit = ?", to, "unit_cell", unit);
            }
        });
    }

    /** What changes with each change of a unit, by its id. */
    private static Map<String, String> states(Handle handle) {
        Map<String, String> states = new HashMap<>();
        handle.createQuery("select id, version, changed_at, place from unit")
                .map((row, context) -> Map.entry(row.getString(1),
                        row.getLong(2) + " " + row.getString(3) + " " + row.getLong(4)))
                .forEach(unit -> states.put(unit.getKey(), unit.getValue()));
        return states;
    }

    /** Keeps the copy beside, because what comes now are other data. @throws IOException if it cannot be moved */
    synchronized void setAside() throws IOException {
        int number = others().size() + 1;
        while (Files.exists(folder.resolve(OTHER + number + ".db"))) {
            number++;
        }
        for (String end : List.of("", "-wal", "-shm")) {
            Path part = folder.resolve(FILE + end);
            if (Files.exists(part)) {
                Files.move(part, folder.resolve(OTHER + number + ".db" + end));
            }
        }
        mark = Optional.empty();
        time = Optional.empty();
    }

    /** Copies that were kept beside. */
    List<Path> others() throws IOException {
        try (Stream<Path> all = Files.list(folder)) {
            return all.filter(each -> String.valueOf(each.getFileName()).matches(OTHER + "\\d+\\.db"))
                    .sorted()
                    .toList();
        }
    }

    private void delete() {
        try {
            for (String end : List.of("", "-wal", "-shm")) {
                Files.deleteIfExists(folder.resolve(FILE + end));
            }
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }
}
