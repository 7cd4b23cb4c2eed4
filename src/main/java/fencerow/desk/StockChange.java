package fencerow.desk;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;

/** Changes that staff make at a screen: looked through by the rules of the stock list, then kept. For any thread. */
public final class StockChange {
    private StockChange() {}

    /** How a change went. */
    public sealed interface Answer {
        /** It went as the stock book says. */
        record Done(Edit.Outcome outcome) implements Answer {}

        /** Nothing was done: in these columns something would be wrong that was not before. */
        record Wrong(Set<String> columns) implements Answer {}
    }

    /**
     * Writes cells of a unit anew. What was wrong with it before does not keep a change away, or nothing could be put
     * right a piece at a time.
     */
    public static Answer write(StockDesk desk, StockEntry entry, Map<String, String> cells) {
        Set<String> wrong = new TreeSet<>(desk.form().read(entry.row().with(cells)).wrong());
        Set<String> before = new TreeSet<>(desk.form().read(entry.row()).wrong());
        before.removeAll(cells.keySet());
        wrong.removeAll(before);
        return wrong.isEmpty()
                ? new Answer.Done(desk.book().edit(
                        new Edit(entry.row().id(), entry.version(), cells, Optional.empty())))
                : new Answer.Wrong(wrong);
    }

    /** Adds a unit. */
    public static Answer add(StockDesk desk, StockRow row) {
        Set<String> wrong = desk.form().read(row).wrong();
        return wrong.isEmpty() ? new Answer.Done(desk.book().add(row)) : new Answer.Wrong(wrong);
    }
}
