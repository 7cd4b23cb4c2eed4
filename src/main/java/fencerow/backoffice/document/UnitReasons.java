package fencerow.backoffice.document;

import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.wording.Phrases;
import fencerow.wording.Reasons;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a match comes to and why, in the sentences that the kiosk says too. */
public final class UnitReasons {
    private static final int MOST_UNCHECKED = 4;

    private UnitReasons() {}

    /** The verdict first, then what speaks for and against the unit, then what to look at before buying. */
    public static List<String> of(Match match, Ranking ranking, Phrases phrases) {
        var words = new Reasons(phrases);
        List<String> reasons = new ArrayList<>();
        reasons.add(phrases.texts().get("verdict." + match.verdict().id() + ".says"));
        if (!match.verdict().hasPlan()) {
            reasons.add(phrases.score(match));
        }
        reasons.addAll(words.speaksFor(match, ranking.needs()));
        if (match.finding() instanceof Finding.Infeasible infeasible && infeasible.irreducible().size() > 1) {
            List<String> together = infeasible.irreducible().stream().map(phrases::requirement)
                    .map(phrases.labels()::inSentence).toList();
            reasons.add(phrases.texts().get("backoffice.not-together", Map.of("needs", phrases.series(together))));
        }
        reasons.addAll(words.speaksAgainst(match, ranking));
        if (match.finding() instanceof Finding.Feasible feasible) {
            feasible.withoutStopgap().ifPresent(better -> reasons.add(phrases.better(feasible.best(), better)));
        }
        ranking.whatIf().concession(match).ifPresent(each -> reasons.add(phrases.concession(each)));
        reasons.addAll(words.toCheck(match, MOST_UNCHECKED));
        return List.copyOf(reasons);
    }
}
