package fencerow.kiosk.find;

import fencerow.search.Kind;
import fencerow.search.Marked;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What is typed, and what that finds. */
final class FindModel {
    private final ObjectProperty<String> query;
    private final ObjectProperty<Found> found = new SimpleObjectProperty<>(Found.NOTHING_YET);

    FindModel(String query) {
        this.query = new SimpleObjectProperty<>(query);
    }

    /** What is typed. */
    ObjectProperty<String> query() {
        return query;
    }

    /** What that finds. */
    ObjectProperty<Found> found() {
        return found;
    }

    /**
     * What is found.
     *
     * @param note        a line above: what to type, or that nothing was found
     * @param didYouMean  the words put right, where one of them is known nowhere
     * @param understood  what was made of the words beyond looking for them, such as a highest price
     * @param kinds       by which what is found can be narrowed
     * @param completions what the words may be the beginning of
     * @param cards       best first
     * @param deadEnd     whether nothing was found, so that the drawn tractor is offered
     */
    record Found(
            Optional<String> note,
            Optional<String> didYouMean,
            Optional<String> understood,
            List<KindChip> kinds,
            List<String> completions,
            List<Card> cards,
            boolean deadEnd) {
        static final Found NOTHING_YET = new Found(
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(), false);

        Found {
            kinds = List.copyOf(kinds);
            completions = List.copyOf(completions);
            cards = List.copyOf(cards);
        }
    }

    /**
     * One kind of things found; empty for all of them.
     *
     * @param words name and number
     */
    record KindChip(Optional<Kind> kind, String words, boolean chosen) {}

    /**
     * One thing found.
     *
     * @param kind  what it is, in a word
     * @param title with the stretches that were looked for
     * @param text  with the stretches that were looked for
     */
    record Card(String kind, Marked title, Marked text, Target target) {}

    /**
     * What a card leads to.
     *
     * @param id among its kind
     */
    record Target(Kind kind, String id) {}
}
