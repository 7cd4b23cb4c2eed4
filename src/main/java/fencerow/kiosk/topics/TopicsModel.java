package fencerow.kiosk.topics;

import fencerow.kiosk.frame.Place;
import fencerow.terms.TopicId;
import java.util.List;

/** What the list of topics shows. */
record TopicsModel(List<Shelf> shelves, List<Card> cards) {
    /** Copies the lists. */
    TopicsModel {
        shelves = List.copyOf(shelves);
        cards = List.copyOf(cards);
    }

    /**
     * A stop of the walk around the tractor, or the core topics.
     *
     * @param number on the walk, empty for the core topics
     * @param chosen whether its topics are shown
     */
    record Shelf(String number, String name, boolean chosen, Place place) {}

    /** One thing to read. */
    record Card(String title, String text, TopicId topic) {}
}
