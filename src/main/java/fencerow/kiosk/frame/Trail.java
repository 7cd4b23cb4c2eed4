package fencerow.kiosk.frame;

import java.util.ArrayList;
import java.util.List;

/**
 * The way a shopper came.
 *
 * @param behind places to go back to, oldest first
 * @param here   the place shown
 */
record Trail(List<Place> behind, Place here) {
    /** How far back a shopper can go; older places are forgotten. */
    private static final int LONGEST = 50;

    Trail {
        behind = List.copyOf(behind);
    }

    static Trail startingAt(Place place) {
        return new Trail(List.of(), place);
    }

    /** One step on; {@code left} is the place left, as it looked then. */
    Trail onward(Place left, Place next) {
        List<Place> all = new ArrayList<>(behind);
        all.add(left);
        return new Trail(all.subList(Math.max(0, all.size() - LONGEST), all.size()), next);
    }

    /** The same way with another last place, where going there is no step of its own. */
    Trail instead(Place next) {
        return new Trail(behind, next);
    }

    boolean canGoBack() {
        return !behind.isEmpty();
    }

    /** One step back; where there is none, the same. */
    Trail back() {
        return canGoBack() ? new Trail(behind.subList(0, behind.size() - 1), behind.get(behind.size() - 1)) : this;
    }
}
