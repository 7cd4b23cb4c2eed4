package fencerow.kiosk.topics;

import fencerow.kiosk.frame.Place;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;

/** What the list of topics shows. What is found changes while one types; all else stays. */
final class TopicsModel {
    private final List<Shelf> shelves;
    private final boolean searching;
    private final ObjectProperty<String> query;
    private final ObjectProperty<List<Card>> cards;
    private final ObjectProperty<String> note = new SimpleObjectProperty<>("");

    TopicsModel(List<Shelf> shelves, Optional<String> query, List<Card> cards) {
        this.shelves = List.copyOf(shelves);
        this.searching = query.isPresent();
        this.query = new SimpleObjectProperty<>(query.orElse(""));
        this.cards = new SimpleObjectProperty<>(List.copyOf(cards));
    }

    /**
     * A stop of the walk around the tractor, or the core topics.
     *
     * @param number on the walk, empty for the core topics
     * @param chosen whether its topics are shown
     */
    record Shelf(String number, String name, boolean chosen, Place place) {}

    /** One thing to read. */
    record Card(String title, String text, Target target) {}

    /** What a card leads to. */
    sealed interface Target {
        /** An explainer. */
        record Topic(TopicId topic) implements Target {}

        /** A trade word. */
        record Word(String id) implements Target {}
    }

    List<Shelf> shelves() {
        return shelves;
    }

    /** Whether the keyboard is out. */
    boolean searching() {
        return searching;
    }

    /** What is typed. */
    ObjectProperty<String> query() {
        return query;
    }

    /** What is listed. */
    ObjectProperty<List<Card>> cards() {
        return cards;
    }

    /** A line above what is listed: what to type, or that nothing was found. */
    ObjectProperty<String> note() {
        return note;
    }
}
