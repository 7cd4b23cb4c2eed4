package fencerow.kiosk.results;

import fencerow.kiosk.matching.Asked;
import fencerow.kiosk.matching.UnitCard;
import fencerow.kiosk.matching.UnitLine;
import fencerow.terms.QuestionId;
import java.util.List;
import java.util.Optional;

/**
 * What suits, as it is shown.
 *
 * @param count   how many can do everything
 * @param summary the same in a sentence that follows the number
 * @param notes   what must be said before the list: nothing told yet, a close call
 * @param rescue  where none can do everything: the must-have whose loss frees most
 * @param cards   the first few
 * @param groups  the others by verdict, or the first of them
 * @param more    how many are not shown
 * @param asked   what was asked for
 * @param pinned  how many are pinned
 */
record ResultsModel(
        int count,
        String summary,
        List<String> notes,
        Optional<Asked.Change> rescue,
        List<UnitCard> cards,
        List<Group> groups,
        int more,
        Asked asked,
        int pinned) {
    ResultsModel {
        notes = List.copyOf(notes);
        cards = List.copyOf(cards);
        groups = List.copyOf(groups);
    }

    /**
     * What is in the way where no single must-have is.
     *
     * @param words    two must-haves, or an answer, without which there would be some
     * @param question of the answer
     */
    record InTheWay(List<String> words, Optional<QuestionId> question) {
        InTheWay {
            words = List.copyOf(words);
        }
    }

    /** Units of one verdict, each on a line. */
    record Group(String heading, List<UnitLine> lines) {
        Group {
            lines = List.copyOf(lines);
        }
    }
}
