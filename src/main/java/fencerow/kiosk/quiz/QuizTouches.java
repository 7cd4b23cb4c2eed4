package fencerow.kiosk.quiz;

import fencerow.terms.OptionId;
import fencerow.terms.TopicId;

/** What the shopper touched in the quiz. */
interface QuizTouches {
    void pick(OptionId option);

    void notSure();

    void sure();

    void next();

    void stop();

    void read(TopicId topic);
}
