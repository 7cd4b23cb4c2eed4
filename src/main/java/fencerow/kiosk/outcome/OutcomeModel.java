package fencerow.kiosk.outcome;

import fencerow.terms.TopicId;
import java.util.List;

/**
 * What the quiz has shown so far.
 *
 * @param check what the shopper got wrong or was not sure of
 * @param knew  what they knew
 */
record OutcomeModel(List<Line> check, List<Line> knew) {
    OutcomeModel {
        check = List.copyOf(check);
        knew = List.copyOf(knew);
    }

    /**
     * One question.
     *
     * @param topic tells more
     * @param name  what it is about
     * @param said  what the shopper answered
     * @param right what is right
     */
    record Line(TopicId topic, String name, String said, String right) {}
}
