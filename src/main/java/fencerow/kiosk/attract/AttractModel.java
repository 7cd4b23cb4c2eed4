package fencerow.kiosk.attract;

import java.util.List;

/**
 * What passers-by see, one after the other.
 *
 * @param showroom its name
 * @param promise  what the kiosk is for
 * @param start    how to begin
 * @param think    introduces a belief
 * @param truth    introduces what is right
 * @param turns    a few beliefs; may be empty, then only the promise is shown
 */
record AttractModel(String showroom, String promise, String start, String think, String truth, List<Turn> turns) {
    AttractModel {
        turns = List.copyOf(turns);
    }

    /** A wrong belief and what is right. */
    record Turn(String belief, String truth) {}
}
