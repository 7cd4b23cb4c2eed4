package fencerow.kiosk.list;

import java.util.List;

/**
 * A list as it is shown.
 *
 * @param work     what it is for, in words
 * @param stops    the lines of page one, in walk-around order
 * @param walkAway signs to stop and leave
 * @param further  what is on the further sheet
 * @param struck   lines struck out
 */
record ListModel(
        String work, List<StopPart> stops, List<Sign> walkAway, List<String> further, List<Struck> struck) {
    ListModel {
        stops = List.copyOf(stops);
        walkAway = List.copyOf(walkAway);
        further = List.copyOf(further);
        struck = List.copyOf(struck);
    }

    /** Lines of one stop of the walk around the tractor. */
    record StopPart(String name, List<Line> lines) {
        StopPart {
            lines = List.copyOf(lines);
        }
    }

    /**
     * A line.
     *
     * @param what    to check
     * @param how     to check it in seconds
     * @param because why it is on this list, each in a sentence
     * @param atStake what a wrong belief about it costs
     */
    record Line(String id, String what, String how, List<String> because, String atStake) {
        Line {
            because = List.copyOf(because);
        }
    }

    /** A sign to stop and leave: what to look at, and what is bad. */
    record Sign(String what, String bad) {}

    /** A line struck out. */
    record Struck(String id, String what) {}
}
