package fencerow.kiosk.guide;

import fencerow.kiosk.matching.Asked;
import fencerow.kiosk.matching.UnitLine;
import java.util.List;
import java.util.Optional;

/**
 * What if.
 *
 * @param count   how many can do everything now
 * @param summary the same in a sentence that follows the number
 * @param changed what has changed since they began, each in a sentence; empty if nothing has
 * @param lines   the first few units
 * @param asked   what is asked for
 * @param budget  in words; that there is none, if there is none
 * @param steps   by how much the budget can be changed at a touch
 * @param pinned  how many are pinned
 */
record GuideModel(
        int count,
        String summary,
        List<String> changed,
        List<UnitLine> lines,
        Asked asked,
        String budget,
        List<Step> steps,
        int pinned) {
    GuideModel {
        changed = List.copyOf(changed);
        lines = List.copyOf(lines);
        steps = List.copyOf(steps);
    }

    /** A change of the budget by so many dollars; empty takes the budget away. */
    record Step(Optional<Long> by, String words) {}
}
