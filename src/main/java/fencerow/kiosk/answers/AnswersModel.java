package fencerow.kiosk.answers;

import fencerow.terms.QuestionId;
import java.util.List;

/**
 * All questions that apply.
 *
 * @param given those answered, in asking order
 * @param open  those without an answer, in asking order
 */
record AnswersModel(List<Row> given, List<Row> open) {
    AnswersModel {
        given = List.copyOf(given);
        open = List.copyOf(open);
    }

    /** A question, and its answer in words. */
    record Row(QuestionId question, String ask, String answer) {}
}
