package fencerow.match;

import fencerow.needs.Requirement;
import java.util.List;

/**
 * How well a unit suits, always with its parts.
 *
 * @param mustsMet must-haves that can be met together
 * @param mustsAll must-haves in all
 * @param percent  0 to 100: the weighted share of wishes met as the unit stands; 100 when nothing is wished for
 * @param met      wishes met as it stands, with what comes with it and what the shopper has
 * @param planned  other wishes that what its plan adds for the must-haves meets too; they do not count in the
 *                 percentage, for better equipped the unit may do with another plan, and must not score less for it
 * @param unmet    wishes not met
 */
public record Score(
        int mustsMet,
        int mustsAll,
        int percent,
        List<Requirement> met,
        List<Requirement> planned,
        List<Requirement> unmet) {
    /** @throws IllegalArgumentException if the percentage or the counts are out of range */
    public Score {
        met = List.copyOf(met);
        planned = List.copyOf(planned);
        unmet = List.copyOf(unmet);
        if (percent < 0 || percent > 100 || mustsMet < 0 || mustsMet > mustsAll) {
            throw new IllegalArgumentException("score " + percent + " with " + mustsMet + " of " + mustsAll
                    + " must-haves is out of range");
        }
    }
}
