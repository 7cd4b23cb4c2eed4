package fencerow.match;

import fencerow.needs.Requirement;
import java.util.List;

/**
 * How well a unit suits, always with its parts.
 *
 * @param mustsMet must-haves that can be met together
 * @param mustsAll must-haves in all
 * @param percent  0 to 100: the weighted share of wishes met as the unit stands; 100 when nothing is wished for
 * @param met      wishes met
 * @param unmet    wishes not met
 */
public record Score(int mustsMet, int mustsAll, int percent, List<Requirement> met, List<Requirement> unmet) {
    /** @throws IllegalArgumentException if the percentage or the counts are out of range */
    public Score {
        met = List.copyOf(met);
        unmet = List.copyOf(unmet);
        if (percent < 0 || percent > 100 || mustsMet < 0 || mustsMet > mustsAll) {
            throw new IllegalArgumentException("score " + percent + " with " + mustsMet + " of " + mustsAll
                    + " must-haves is out of range");
        }
    }
}
