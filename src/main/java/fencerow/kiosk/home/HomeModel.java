package fencerow.kiosk.home;

import fencerow.kiosk.frame.Place;
import fencerow.kiosk.kit.Icon;
import java.util.List;

/**
 * What the start page shows.
 *
 * @param doors  in the order a new shopper may want them
 * @param search the words on the search button
 */
record HomeModel(List<Door> doors, String search) {
    HomeModel {
        doors = List.copyOf(doors);
    }

    /** One way in. */
    record Door(Icon icon, String title, String text, Place place) {}
}
