package fencerow.kiosk.stockrow;

import fencerow.desk.StockColumn;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;

/**
 * A unit as it is written.
 *
 * @param title    of its machine
 * @param about    its id, and when it was changed last
 * @param sale     whether it can be bought
 * @param ways     what can be done about that
 * @param unknowns how many pieces of equipment nobody has checked
 * @param note     that the row cannot be shown to shoppers; empty where it can
 * @param groups   of fields
 */
record StockRowModel(
        String title, String about, String sale, List<Way> ways, int unknowns, Optional<String> note,
        List<Group> groups) {
    /** Copies the lists. */
    StockRowModel {
        ways = List.copyOf(ways);
        groups = List.copyOf(groups);
    }

    /** What can be done about whether a unit can be bought. */
    enum Way { HOLD, SELL, RELEASE }

    /** Fields that belong together. */
    record Group(String name, List<Field> fields) {
        /** Copies the fields. */
        Group {
            fields = List.copyOf(fields);
        }
    }

    /**
     * One column.
     *
     * @param name  in words
     * @param value in words
     * @param wrong whether it cannot stay as it is
     */
    record Field(StockColumn column, String name, String value, boolean wrong) {}

    /**
     * A field that is being changed.
     *
     * @param text    as it is written now
     * @param note    what is wrong with it, or what is needed
     * @param choices where words are chosen
     */
    record Editing(StockColumn column, String name, String text, String note, List<Choice> choices) {
        /** Copies the choices. */
        Editing {
            choices = List.copyOf(choices);
        }
    }

    /** One of the words that can stand in a field; blank for none. */
    record Choice(String text, String words, boolean chosen) {}

    /** A day until which a unit can be held. */
    record HoldDay(LocalDate until, String words) {}
}
