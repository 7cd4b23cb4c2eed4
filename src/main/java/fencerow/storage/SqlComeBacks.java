package fencerow.storage;

import fencerow.desk.ComeBacks;
import java.time.LocalDate;
import java.util.Optional;

/** The table of sealed visits. */
final class SqlComeBacks implements ComeBacks {
    private final DatabaseFile file;

    SqlComeBacks(DatabaseFile file) {
        this.file = file;
    }

    @Override
    public void keep(Row row) {
        file.write(handle -> handle.createUpdate("insert into come_back (handle, last_day, sealed) "
                        + "values (:handle, :day, :sealed) "
                        + "on conflict (handle) do update set last_day = excluded.last_day, sealed = excluded.sealed")
                .bind("handle", row.handle())
                .bind("day", row.lastDay().toString())
                .bind("sealed", row.sealed())
                .execute());
    }

    @Override
    public Optional<Row> findRow(String handle) {
        return file.read(open -> open.createQuery("select last_day, sealed from come_back where handle = :handle")
                .bind("handle", handle)
                .map((row, context) -> new Row(
                        handle, LocalDate.parse(row.getString("last_day")), row.getString("sealed")))
                .findOne());
    }

    @Override
    public int forgetBefore(LocalDate day) {
        return file.write(handle -> handle.createUpdate("delete from come_back where last_day < :day")
                .bind("day", day.toString())
                .execute());
    }
}
