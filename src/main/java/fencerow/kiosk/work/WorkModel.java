package fencerow.kiosk.work;

import fencerow.kiosk.frame.Place;
import java.util.List;

/**
 * The list of calculations as it is shown.
 *
 * @param lead  what to do here
 * @param areas one of them open
 * @param cards of the open area
 */
record WorkModel(String lead, List<Area> areas, List<Card> cards) {
    WorkModel {
        areas = List.copyOf(areas);
        cards = List.copyOf(cards);
    }

    /** An area, and whether it is open. */
    record Area(String name, boolean chosen, Place place) {}

    /** A calculation: the question it answers, and what it says in the end. */
    record Card(String ask, String gives, Place place) {}
}
