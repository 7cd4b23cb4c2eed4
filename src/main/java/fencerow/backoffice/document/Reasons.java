package fencerow.backoffice.document;

import fencerow.match.Blocked;
import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Verify;
import fencerow.needs.Requirement;
import fencerow.wording.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** What a match comes to and why, in sentences. */
public final class Reasons {
    private Reasons() {}

    /** The verdict first, then what decides it, then what else matters. */
    public static List<String> of(Match match, Phrases phrases) {
        List<String> reasons = new ArrayList<>();
        reasons.add(phrases.texts().get("verdict." + match.verdict().id() + ".says"));
        if (match.finding() instanceof Finding.Infeasible infeasible) {
            reasons.add(phrases.score(match) + ".");
            addCauses(infeasible, match, phrases, reasons);
        } else if (match.finding() instanceof Finding.Feasible feasible) {
            feasible.withoutStopgap()
                    .ifPresent(better -> reasons.add(phrases.better(feasible.best(), better) + "."));
            match.overBudget().ifPresent(over -> reasons.add(
                    phrases.texts().get("price.over-budget", Map.of("amount", phrases.money(over))) + "."));
        }
        for (Requirement wish : match.score().unmet()) {
            reasons.add(phrases.texts().get("backoffice.wish-unmet", Map.of("wish", phrases.requirement(wish))));
        }
        for (Verify verify : match.verify()) {
            reasons.add(phrases.verify(verify));
        }
        if (match.bracketed()) {
            reasons.add(phrases.texts().get("verify.bracketed"));
        }
        return List.copyOf(reasons);
    }

    private static void addCauses(Finding.Infeasible infeasible, Match match, Phrases phrases, List<String> to) {
        List<String> together = infeasible.irreducible().stream().map(phrases::requirement).toList();
        if (together.size() > 1) {
            to.add(phrases.texts().get("backoffice.not-together", Map.of("needs", phrases.list(together))));
        }
        for (Blocked blocked : infeasible.why()) {
            to.add(phrases.blocked(blocked, match) + ".");
        }
    }
}
