package fencerow.checklist;

import fencerow.needs.Requirement;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.OptionId;

/** Why a line is on this shopper's list. */
public sealed interface Because {
    /** The shopper's work needs it. */
    record YourWork(Requirement requirement) implements Because {}

    /**
     * The shopper believed something that is not so.
     *
     * @param sure whether they said to be sure
     */
    record WrongBelief(QuizQuestion question, OptionId believed, boolean sure) implements Because {}

    /** The shopper was not sure. */
    record Unsure(QuizQuestion question) implements Because {}

    /** It belongs on every list. */
    record ForEveryone() implements Because {}

    /** It belongs on the list of anyone who looks at used machines. */
    record UsedMachine() implements Because {}

    /** It belongs on the list of anyone who buys new. */
    record NewMachine() implements Because {}

    /** The word used in documents. */
    default String id() {
        if (this instanceof YourWork) {
            return "your-work";
        }
        if (this instanceof WrongBelief) {
            return "wrong-belief";
        }
        if (this instanceof Unsure) {
            return "unsure";
        }
        if (this instanceof UsedMachine) {
            return "used-machine";
        }
        return this instanceof NewMachine ? "new-machine" : "for-everyone";
    }
}
