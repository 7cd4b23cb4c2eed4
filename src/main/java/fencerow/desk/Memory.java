package fencerow.desk;

import java.util.Map;
import java.util.Optional;

/** What the program remembers from one run to the next. */
public interface Memory {
    /** What was remembered under the name. */
    Optional<String> find(String name);

    /** Remembers a text under a name. @throws NotKeptException if the database cannot keep it */
    void remember(String name, String text);

    /**
     * Remembers a text under a name unless one is remembered already, by whoever came first.
     *
     * @return what is remembered from now on
     * @throws NotKeptException if the database cannot keep it
     */
    String settle(String name, String text);

    /** How people have named columns of stock lists before, as they wrote them, and the column meant. */
    Map<String, String> columns();

    /** Remembers what people mean by their columns. @throws NotKeptException if the database cannot keep it */
    void rememberColumns(Map<String, String> columns);
}
