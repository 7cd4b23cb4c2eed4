package fencerow.kiosk.attract;

import fencerow.kiosk.frame.Premises;
import fencerow.kiosk.frame.Sayings;
import java.util.List;

/**
 * What passers-by see, one after the other.
 *
 * @param showroom its name
 * @param promise  what the kiosk is for
 * @param start    how to begin
 * @param moment   what is said to who began while the kiosk is still starting
 * @param think    introduces a belief
 * @param truth    introduces what is right
 * @param turns    a few beliefs; may be empty, then only the promise is shown
 */
record AttractModel(
        String showroom, String promise, String start, String moment, String think, String truth, List<Turn> turns) {
    AttractModel {
        turns = List.copyOf(turns);
    }

    static AttractModel of(Premises premises, Sayings words) {
        return new AttractModel(
                premises.settings().name(), words.say("attract.promise"), words.say("attract.start"),
                words.say("attract.moment"), words.say("attract.people-think"), words.say("attract.in-truth"),
                new AttractInteractor(premises.showroom().catalogue(), words.texts()).turns());
    }

    /** A wrong belief and what is right. */
    record Turn(String belief, String truth) {}
}
