package fencerow.storage;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.logging.Level;
import java.util.logging.Logger;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;

/** Brings the tables up to date. Asks first whether that is needed: loading the library takes most of a second. */
final class Migrations {
    /** The newest script; the test holds it against the resources. */
    static final String NEWEST = "2";

    /** The library tells of every step; only what goes wrong matters. Held here, or the level would be forgotten. */
    private static final Logger LIBRARY = Logger.getLogger("org.flywaydb");

    private static final String FOLDER = "classpath:fencerow/storage/migration";

    private Migrations() {}

    /** @throws FlywayException if the tables cannot be brought up to date */
    static void run(DatabaseFile file) {
        if (!isUpToDate(file)) {
            LIBRARY.setLevel(Level.WARNING);
            Flyway.configure(Migrations.class.getClassLoader())
                    .dataSource(file.source())
                    .locations(FOLDER)
                    .load()
                    .migrate();
        }
    }

    private static boolean isUpToDate(DatabaseFile file) {
        try (Connection connection = file.connect();
                Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery(
                        "select version from flyway_schema_history where success = 1 order by installed_rank desc")) {
            return found.next() && NEWEST.equals(found.getString(1));
        } catch (SQLException e) {
            // No such table yet, or nothing that can be read: the library says what is wrong.
            return false;
        }
    }
}
