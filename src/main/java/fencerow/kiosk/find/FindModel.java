package fencerow.kiosk.find;

import fencerow.search.Kind;
import fencerow.search.Marked;
import fencerow.search.Tag;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
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
     * @param filters     further ways to narrow it, by part of the tractor and by its size
     * @param completions what the words may be the beginning of
     * @param cards       best first; before anything is typed, all there is to read, by name
     * @param deadEnd     whether nothing was found, so that the drawn tractor is offered
     */
    record Found(
            Optional<String> note,
            Optional<String> didYouMean,
            Optional<String> understood,
            List<KindChip> kinds,
            List<Filter> filters,
            List<String> completions,
            List<Card> cards,
            boolean deadEnd) {
        static final Found NOTHING_YET = new Found(
                Optional.empty(), Optional.empty(), Optional.empty(), List.of(), List.of(), List.of(), List.of(),
                false);

        Found {
            kinds = List.copyOf(kinds);
            filters = List.copyOf(filters);
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
     * What kinds, parts and sizes are shown alone.
     *
     * @param kind all where empty
     * @param only at most one tag of each sort
     */
    record Narrowed(Optional<Kind> kind, Set<Tag> only) {
        static final Narrowed NOT = new Narrowed(Optional.empty(), Set.of());

        Narrowed {
            only = Set.copyOf(only);
        }

        Narrowed to(Optional<Kind> other) {
            return new Narrowed(other, only);
        }

        /** With this tag, or none, of the sort. */
        Narrowed to(Tag.Of of, Optional<Tag> tag) {
            return new Narrowed(kind, Stream.concat(only.stream().filter(each -> each.of() != of), tag.stream())
                    .collect(Collectors.toSet()));
        }
    }

    /**
     * A way to narrow what is found.
     *
     * @param words what it goes by
     * @param chips everything, and each choice
     */
    record Filter(Tag.Of of, String words, List<TagChip> chips) {
        Filter {
            chips = List.copyOf(chips);
        }

        boolean isChosen() {
            return chips.stream().anyMatch(TagChip::isNarrowing);
        }
    }

    /**
     * One choice; empty for all of them.
     *
     * @param words name and number
     */
    record TagChip(Optional<Tag> tag, String words, boolean chosen) {
        boolean isNarrowing() {
            return chosen && tag.isPresent();
        }
    }

    /**
     * One thing found.
     *
     * @param kind  what it is, in a word
     * @param title with the stretches that were looked for
     * @param text  with the stretches that were looked for; empty where the title says it all
     */
    record Card(String kind, Marked title, Marked text, Target target) {}

    /**
     * What a card leads to.
     *
     * @param id among its kind
     */
    record Target(Kind kind, String id) {}
}
