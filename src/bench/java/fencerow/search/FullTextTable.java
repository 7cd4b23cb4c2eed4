package fencerow.search;

import java.sql.Connection;
import java.sql.DriverManager;
import java.sql.PreparedStatement;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * The entries in a full-text table of SQLite: stemmed English, accents folded, words as beginnings, ranked by BM25 with
 * titles first. What somebody would use who did not build an index of their own.
 */
final class FullTextTable implements AutoCloseable {
    private static final String FIND = "select kind, id, title from entry where entry match ? and language = ?"
            + " order by bm25(entry, 0, 0, 0, 10.0, 6.0, 3.0, 1.0) limit 20";

    private final Connection connection;
    private final PreparedStatement find;

    private FullTextTable(Connection connection) throws SQLException {
        this.connection = connection;
        this.find = connection.prepareStatement(FIND);
    }

    static FullTextTable of(List<Entry> entries) throws SQLException {
        Connection connection = DriverManager.getConnection("jdbc:sqlite::memory:");
        try (Statement statement = connection.createStatement()) {
            statement.execute("create virtual table entry using fts5(kind unindexed, id unindexed, language unindexed,"
                    + " title, names, related, words, tokenize = 'porter unicode61 remove_diacritics 2',"
                    + " prefix = '1 2 3')");
        }
        connection.setAutoCommit(false);
        try (PreparedStatement add = connection.prepareStatement("insert into entry values (?, ?, ?, ?, ?, ?, ?)")) {
            for (Entry entry : entries) {
                add.setString(1, entry.kind().id());
                add.setString(2, entry.id());
                add.setString(3, entry.language());
                add.setString(4, entry.title());
                add.setString(5, String.join(" ", entry.names()));
                add.setString(6, String.join(" ", entry.related()));
                add.setString(7, entry.passages().stream().map(Passage::words).collect(Collectors.joining(" ")));
                add.addBatch();
            }
            add.executeBatch();
        }
        connection.commit();
        return new FullTextTable(connection);
    }

    /** What matches all the words, else any of them. */
    List<Hit> find(Query query) {
        List<String> words = Stream.of(query.text().split("[^\\p{L}\\p{N}]+"))
                .filter(word -> !word.isEmpty())
                .map(word -> "\"" + word + "\"*")
                .toList();
        if (words.isEmpty()) {
            return List.of();
        }
        List<Hit> all = ask(String.join(" AND ", words), query.language());
        return all.isEmpty() ? ask(String.join(" OR ", words), query.language()) : all;
    }

    private List<Hit> ask(String match, String language) {
        try {
            find.setString(1, match);
            find.setString(2, language);
            List<Hit> hits = new ArrayList<>();
            try (ResultSet rows = find.executeQuery()) {
                while (rows.next()) {
                    Kind kind = Stream.of(Kind.values())
                            .filter(each -> each.id().equals(text(rows, 1)))
                            .findFirst()
                            .orElseThrow();
                    hits.add(new Hit(kind, text(rows, 2), Marked.plain(text(rows, 3)), "", Marked.plain(""), 0));
                }
            }
            return hits;
        } catch (SQLException e) {
            throw new IllegalStateException("the full-text table cannot be asked for [" + match + "]", e);
        }
    }

    private static String text(ResultSet rows, int column) {
        try {
            return rows.getString(column);
        } catch (SQLException e) {
            throw new IllegalStateException(e);
        }
    }

    /** How good its ranking is, by the same measure as ours. */
    Quality quality(List<Judged> judged) {
        return Quality.of(judged.stream()
                .map(each -> Quality.Asked.of(find(Query.of(each.text(), each.language())), each))
                .toList());
    }

    @Override
    public void close() throws SQLException {
        connection.close();
    }
}
