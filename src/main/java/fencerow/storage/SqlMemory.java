package fencerow.storage;

import fencerow.desk.Memory;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;

/** Tables of what is remembered. */
final class SqlMemory implements Memory {
    private final Database database;

    SqlMemory(Database database) {
        this.database = database;
    }

    @Override
    public Optional<String> find(String name) {
        return database.read(handle -> handle.createQuery("select content from memory where name = :name")
                .bind("name", name)
                .mapTo(String.class)
                .findOne());
    }

    @Override
    public void remember(String name, String text) {
        database.write(handle -> handle.createUpdate("insert into memory (name, content) values (:name, :content) "
                        + "on conflict (name) do update set content = excluded.content")
                .bind("name", name)
                .bind("content", text)
                .execute());
    }

    @Override
    public String settle(String name, String text) {
        return database.write(handle -> {
            handle.createUpdate("insert into memory (name, content) values (:name, :content) "
                            + "on conflict (name) do nothing")
                    .bind("name", name)
                    .bind("content", text)
                    .execute();
            return handle.createQuery("select content from memory where name = :name")
                    .bind("name", name)
                    .mapTo(String.class)
                    .one();
        });
    }

    @Override
    public Map<String, String> columns() {
        return database.read(handle -> {
            var columns = new TreeMap<String, String>();
            handle.createQuery("select written, field from column_name")
                    .map((row, context) -> columns.put(row.getString("written"), row.getString("field")))
                    .list();
            return columns;
        });
    }

    @Override
    public void rememberColumns(Map<String, String> columns) {
        if (columns.isEmpty()) {
            return;
        }
        database.write(handle -> {
            var batch = handle.prepareBatch("insert into column_name (written, field) values (:written, :field) "
                    + "on conflict (written) do update set field = excluded.field");
            columns.forEach((written, field) -> batch.bind("written", written).bind("field", field).add());
            return batch.execute().length;
        });
    }
}
