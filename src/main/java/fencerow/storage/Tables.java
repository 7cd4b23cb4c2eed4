package fencerow.storage;

import java.sql.Connection;
import java.sql.DatabaseMetaData;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.TreeSet;
import org.jdbi.v3.core.Handle;
import org.jdbi.v3.core.transaction.TransactionException;

/** All tables of a database, whatever is in them: found, copied, summed. Values are whole numbers and texts. */
final class Tables {
    private static final int BATCH = 1_000;
    static final String HISTORY = "flyway_schema_history";

    private Tables() {}

    /**
     * What a table holds.
     *
     * @param rows how many
     * @param sum  of a number made of each row's columns and values, whatever the order of the rows
     */
    record Sum(long rows, long sum) {}

    /** The names, each after those that it refers to; the library's own is left out. */
    static List<String> names(Handle handle) {
        return sql(() -> {
            Connection connection = handle.getConnection();
            DatabaseMetaData meta = connection.getMetaData();
            Map<String, TreeSet<String>> needs = new TreeMap<>();
            try (ResultSet found = meta.getTables(
                    connection.getCatalog(), connection.getSchema(), "%", new String[] {"TABLE"})) {
                while (found.next()) {
                    String name = found.getString("TABLE_NAME");
                    if (!name.equals(HISTORY) && !name.startsWith("sqlite_")) {
                        needs.put(name, new TreeSet<>());
                    }
                }
            }
            for (Map.Entry<String, TreeSet<String>> each : needs.entrySet()) {
                try (ResultSet keys = meta.getImportedKeys(
                        connection.getCatalog(), connection.getSchema(), each.getKey())) {
                    while (keys.next()) {
                        each.getValue().add(keys.getString("PKTABLE_NAME"));
                    }
                }
            }
            List<String> order = new ArrayList<>();
            while (order.size() < needs.size()) {
                int before = order.size();
                needs.forEach((name, others) -> {
                    if (!order.contains(name) && order.containsAll(others)) {
                        order.add(name);
                    }
                });
                if (order.size() == before) {
                    throw new IllegalStateException("tables refer to each other in a circle: " + needs);
                }
            }
            return order;
        });
    }

    /** Deletes all rows of the tables, the last table first. */
    static void empty(Handle handle, List<String> tables) {
        List<String> backwards = new ArrayList<>(tables);
        Collections.reverse(backwards);
        backwards.forEach(table -> handle.execute("delete from " + table));
    }

    /**
     * Writes what a query finds into the columns of the same names of a table.
     *
     * @param values for the query's question marks
     */
    static void copy(Handle from, String query, Handle to, String table, String... values) {
        sql(() -> {
            try (PreparedStatement read = from.getConnection().prepareStatement(query)) {
                for (int i = 0; i < values.length; i++) {
                    read.setString(i + 1, values[i]);
                }
                read.setFetchSize(BATCH);
                try (ResultSet rows = read.executeQuery()) {
                    write(rows, to, table);
                }
            }
            return table;
        });
    }

    private static void write(ResultSet rows, Handle to, String table) throws SQLException {
        List<String> columns = columns(rows);
        String places = String.join(", ", Collections.nCopies(columns.size(), "?"));
        try (PreparedStatement write = to.getConnection().prepareStatement(
                "insert into " + table + " (" + String.join(", ", columns) + ") values (" + places + ")")) {
            int waiting = 0;
            while (rows.next()) {
                for (int i = 1; i <= columns.size(); i++) {
                    if (rows.getObject(i) instanceof Number number) {
                        write.setLong(i, number.longValue());
                    } else {
                        write.setString(i, rows.getString(i));
                    }
                }
                write.addBatch();
                if (++waiting % BATCH == 0) {
                    write.executeBatch();
                }
            }
            write.executeBatch();
        }
    }

    private static List<String> columns(ResultSet rows) throws SQLException {
        List<String> columns = new ArrayList<>();
        for (int i = 1; i <= rows.getMetaData().getColumnCount(); i++) {
            columns.add(rows.getMetaData().getColumnName(i).toLowerCase(Locale.ROOT));
        }
        return columns;
    }

    /** What a table holds. */
    static Sum sum(Handle handle, String table) {
        return sql(() -> {
            try (PreparedStatement read = handle.getConnection().prepareStatement("select * from " + table)) {
                read.setFetchSize(BATCH);
                try (ResultSet rows = read.executeQuery()) {
                    List<String> columns = columns(rows);
                    List<Integer> order = new ArrayList<>();
                    new TreeSet<>(columns).forEach(column -> order.add(columns.indexOf(column) + 1));
                    long count = 0;
                    long sum = 0;
                    while (rows.next()) {
                        count++;
                        sum += number(rows, order);
                    }
                    return new Sum(count, sum);
                }
            }
        });
    }

    /** A number of 64 bits that changes with any value and its place (FNV-1a, its bits mixed at the end). */
    private static long number(ResultSet rows, List<Integer> order) throws SQLException {
        long number = 0xcbf29ce484222325L;
        for (int column : order) {
            String text = rows.getString(column);
            String marked = text == null ? "-" : text.length() + ":" + text;
            for (int i = 0; i < marked.length(); i++) {
                number = (number ^ marked.charAt(i)) * 0x100000001b3L;
            }
        }
        number ^= number >>> 32;
        number *= 0xd6e8feb86659fd93L;
        return number ^ number >>> 32;
    }

    private interface Work<T> {
        T run() throws SQLException;
    }

    /** What the driver throws, as the SQL library throws it. */
    private static <T> T sql(Work<T> work) {
        try {
            return work.run();
        } catch (SQLException e) {
            throw new TransactionException("the tables could not be copied", e);
        }
    }
}
