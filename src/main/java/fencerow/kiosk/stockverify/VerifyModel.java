package fencerow.kiosk.stockverify;

import java.util.List;

/**
 * What is to be checked on a unit.
 *
 * @param title of the unit
 * @param left  how many pieces are still unknown, in words
 * @param stops in walking order
 */
record VerifyModel(String title, String left, List<Stop> stops) {
    /** Copies the list. */
    VerifyModel {
        stops = List.copyOf(stops);
    }

    /** A place on the walk. */
    record Stop(String name, List<Check> checks) {
        /** Copies the list. */
        Stop {
            checks = List.copyOf(checks);
        }
    }

    /**
     * One piece of equipment.
     *
     * @param column  it is written in
     * @param how     to see it in seconds
     * @param answers that can be touched
     * @param wrong   why the last answer was not kept; blank where it was
     */
    record Check(String column, String name, String how, List<Answer> answers, String wrong) {
        /** Copies the list. */
        Check {
            answers = List.copyOf(answers);
        }
    }

    /** An answer, as it is written, in words, and whether it is the one that stands. */
    record Answer(String text, String words, boolean chosen) {}
}
