package fencerow.storage;

import java.sql.Connection;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Statement;
import java.util.UUID;
import java.util.logging.Level;
import java.util.logging.Logger;
import javax.sql.DataSource;
import org.flywaydb.core.Flyway;
import org.flywaydb.core.api.FlywayException;
import org.jdbi.v3.core.Handle;

/** Brings the tables up to date. Asks first whether that is needed: loading the library takes most of a second. */
final class Migrations {
    /** The newest script; the test holds it against the resources. */
    static final int NEWEST = 10;

    /** The library tells of every step; only what goes wrong matters. Held here, or the level would be forgotten. */
    private static final Logger LIBRARY = Logger.getLogger("org.flywaydb");

    private static final String FOLDER = "classpath:fencerow/storage/migration";

    private Migrations() {}

    /** @throws FlywayException if the tables cannot be brought up to date */
    static void run(DatabaseFile file) {
        if (version(file.source()) != NEWEST) {
            migrate(file.source());
            file.write(Migrations::name);
        }
    }

    /** Likewise, by a role that may change the schema. @throws FlywayException if that cannot be done */
    static void run(DatabaseServer server) {
        migrate(server.source());
        server.write(Migrations::name);
    }

    private static void migrate(DataSource source) {
        LIBRARY.setLevel(Level.SEVERE);
        // What was developed side by side lands in any order.
        Flyway.configure(Migrations.class.getClassLoader())
                .dataSource(source)
                .locations(FOLDER)
                .outOfOrder(true)
                .load()
                .migrate();
    }

    /** Gives the data a name of their own, by which they are known again. */
    private static int name(Handle handle) {
        return handle.execute("insert into instance (id) select ? where not exists (select 1 from instance)",
                UUID.randomUUID().toString());
    }

    /** The newest script that has run; 0 where none has, or nothing can be read. */
    static int version(DataSource source) {
        try (Connection connection = source.getConnection();
                Statement statement = connection.createStatement();
                ResultSet found = statement.executeQuery("select version from flyway_schema_history where success")) {
            int newest = 0;
            while (found.next()) {
                newest = Math.max(newest, Integer.parseInt(found.getString(1)));
            }
            return newest;
        } catch (SQLException e) {
            // No such table yet, or nothing that can be read: the library says what is wrong.
            return 0;
        }
    }
}
