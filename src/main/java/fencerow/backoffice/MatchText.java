package fencerow.backoffice;

import fencerow.backoffice.document.MatchDocument;
import fencerow.backoffice.document.UnitReasons;
import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.match.Ranking;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import fencerow.wording.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** A ranking as a salesperson would like to read it. */
final class MatchText {
    private final Phrases phrases;
    private final TextSheet sheet = new TextSheet();

    private MatchText(Phrases phrases) {
        this.phrases = phrases;
    }

    /**
     * Writes down a ranking.
     *
     * @param document the same as a document; holds what would change and the other ways
     * @param most     the most units to write down
     */
    static String of(Ranking ranking, MatchDocument document, Phrases phrases, int most) {
        var text = new MatchText(phrases);
        text.needs(ranking.needs());
        text.units(ranking, most);
        text.sentences("changes", changes(document));
        text.sentences("other-ways", document.otherWays().stream().map(text::otherWay).toList());
        text.sentences("cautions", document.cautions().stream().map(caution -> caution.text()).toList());
        return text.sheet.toString();
    }

    private static List<String> changes(MatchDocument document) {
        List<String> reasons = new ArrayList<>();
        document.changes().forEach(change -> reasons.add(change.reason()));
        document.budgetRaise().ifPresent(raise -> reasons.add(raise.reason()));
        document.pair().ifPresent(pair -> reasons.add(pair.reason()));
        return reasons;
    }

    private void needs(Needs needs) {
        String work = phrases.work(needs);
        sheet.line(0, work.isEmpty() ? words("match.no-work") : words("match.work", Map.of("work", work)));
        needs.budget().ifPresent(budget ->
                sheet.line(0, words("match.budget", Map.of("budget", phrases.money(budget)))));
        requirements("musts", needs.musts());
        requirements("wishes", needs.wishes());
    }

    private void requirements(String key, List<Requirement> requirements) {
        if (!requirements.isEmpty()) {
            sheet.heading(words("match." + key));
            sheet.rows(2, requirements.stream()
                    .map(each -> List.of(phrases.requirement(each), phrases.because(each)))
                    .distinct()
                    .toList());
        }
    }

    private void units(Ranking ranking, int most) {
        List<Match> shown = ranking.matches().stream().limit(most).toList();
        sheet.heading(words("match.units", Map.of("shown", shown.size(), "all", ranking.matches().size())));
        for (int i = 0; i < shown.size(); i++) {
            unit(i + 1, shown.get(i), ranking);
        }
    }

    private void unit(int rank, Match match, Ranking ranking) {
        String verdict = phrases.texts().get("verdict." + match.verdict().id() + ".name");
        sheet.heading(words("match.unit", Map.of(
                "rank", rank,
                "id", match.unit().id().value(),
                "unit", phrases.labels().unit(match.unit()),
                "availability", phrases.labels().availability(match.unit()),
                "verdict", verdict)));
        if (match.finding() instanceof Finding.Feasible feasible) {
            sheet.line(4, phrases.score(match));
            sheet.rows(4, prices(match, feasible.best()));
        }
        UnitReasons.of(match, ranking, phrases).stream().skip(1).forEach(reason -> sheet.point(4, reason));
    }

    private List<List<String>> prices(Match match, Plan plan) {
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(words("match.out-the-door"), phrases.money(match.price().asking().outTheDoor())));
        match.price().asking().promo().ifPresent(promo ->
                rows.add(List.of(phrases.texts().get("price.promo"), phrases.money(promo))));
        if (!match.price().catchUp().isZero()) {
            rows.add(List.of(phrases.texts().get("price.catch-up"), phrases.range(match.price().catchUp())));
        }
        for (Plan.Line line : plan.lines()) {
            String name = phrases.planLine(line);
            String stopgap = line.stopgap() ? " (" + phrases.texts().get("plan.stopgap") + ")" : "";
            rows.add(List.of("+ " + name + stopgap, price(line.price())));
        }
        if (match.price().trade().cents() > 0) {
            rows.add(List.of(phrases.texts().get("price.trade"),
                    phrases.money(Money.ZERO.minus(match.price().trade()))));
        }
        rows.add(List.of(phrases.texts().get("price.ready"), phrases.range(match.price().total())));
        return rows;
    }

    private String price(PriceRange range) {
        return range.isZero() ? phrases.texts().get("price.yours") : phrases.range(range);
    }

    private String otherWay(MatchDocument.OtherWayEntry way) {
        return phrases.texts().get("job." + way.job() + ".name") + ". " + way.reason();
    }

    private void sentences(String key, List<String> sentences) {
        if (!sentences.isEmpty()) {
            sheet.heading(words("match." + key));
            sentences.forEach(sentence -> sheet.point(2, sentence));
        }
    }

    private String words(String key) {
        return phrases.texts().get("backoffice." + key);
    }

    private String words(String key, Map<String, ?> arguments) {
        return phrases.texts().get("backoffice." + key, arguments);
    }
}
