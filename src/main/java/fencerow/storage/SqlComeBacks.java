package fencerow.storage;

import fencerow.desk.ComeBacks;
import java.time.LocalDate;
import java.util.Optional;

/** The table of sealed visits. */
final class SqlComeBacks implements ComeBacks {
    private final Database database;

    SqlComeBacks(Database database) {
        this.database = database;
    }

    @Override
    public void keep(Row row) {
        database.write(handle -> handle.createUpdate("insert into come_back (handle, last_day, sealed) "
                        + "values (:handle, :day, :sealed) "
                        + "on conflict (handle) do update set last_day = excluded.last_day, sealed = excluded.sealed")
                .bind("handle", row.handle())
                .bind("day", row.lastDay().toString())
                .bind("sealed", row.sealed())
                .execute());
    }

    @Override
    public Optional<Row> findRow(String handle) {
        return database.read(open -> open.createQuery("select last_day, sealed from come_back where handle = :handle")
                .bind("handle", handle)
                .map((row, context) -> new Row(
                        handle, LocalDate.parse(row.getString("last_day")), row.getString("sealed")))
                .findOne());
    }

    @Override
    public int forgetBefore(LocalDate day) {
        return database.write(handle -> handle.createUpdate("delete from come_back where last_day < :day")
                .bind("day", day.toString())
                .execute());
    }
}
