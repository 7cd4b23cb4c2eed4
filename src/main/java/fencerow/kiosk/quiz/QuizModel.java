package fencerow.kiosk.quiz;

import fencerow.kiosk.kit.Sketch;
import fencerow.terms.OptionId;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/**
 * One question, asked or answered.
 *
 * @param ask      the question
 * @param options  what can be picked, in the order shown
 * @param progress how far along the run one is
 * @param sketch   of what it is about, where that gives nothing away
 * @param answer   what is said to the answer, once there is one
 */
record QuizModel(String ask, List<Option> options, Progress progress, Optional<Sketch> sketch,
        Optional<Reply> answer) {
    QuizModel {
        options = List.copyOf(options);
    }

    /**
     * One thing to pick.
     *
     * @param right  whether it is the right one
     * @param picked whether the shopper picked it
     */
    record Option(OptionId id, String words, boolean right, boolean picked) {}

    /** Questions of this run behind, and in all; the same in words. */
    record Progress(int done, int all, String words) {}

    /**
     * What is said to an answer.
     *
     * @param heading    right, wrong or open
     * @param refutation why the answer picked is wrong, where it is
     * @param right      what is right and why
     * @param stress     said where the shopper was sure and wrong
     * @param atStake    what being wrong costs this shopper, where it is known
     * @param topic      tells more
     * @param last       whether the run ends with it
     */
    record Reply(
            String heading,
            Optional<String> refutation,
            String right,
            Optional<String> stress,
            Optional<String> atStake,
            TopicId topic,
            boolean last) {}
}
