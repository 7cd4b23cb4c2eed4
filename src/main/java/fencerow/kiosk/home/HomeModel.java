package fencerow.kiosk.home;

import fencerow.explainers.Drawing;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Icon;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the start page shows.
 *
 * @param doors  in the order a new shopper may want them
 * @param search the words on the search button
 * @param work   the words on the button to the calculations
 * @param code   the words on the button for who has a code; empty where no codes are given
 * @param tractor the drawn one, whose parts lead to their explainers; empty where no drawing is shipped
 */
record HomeModel(List<Door> doors, String search, String work, Optional<String> code, Optional<Tractor> tractor) {
    HomeModel {
        doors = List.copyOf(doors);
    }

    /**
     * The drawn tractor.
     *
     * @param alternative what is drawn, in words
     * @param invitation  to touch it
     * @param parts       the name of each part that has an explainer, by its topic
     * @param others      it seen from other sides
     */
    record Tractor(
            Drawing drawing, String alternative, String invitation, Map<String, String> parts, List<Other> others) {
        Tractor {
            parts = Map.copyOf(parts);
            others = List.copyOf(others);
        }
    }

    /** The tractor from another side, and what is drawn in words. */
    record Other(Drawing drawing, String alternative) {}

    /** One way in. */
    record Door(Icon icon, String title, String text, Place place) {}
}
