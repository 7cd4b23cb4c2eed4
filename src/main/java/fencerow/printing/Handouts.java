package fencerow.printing;

import com.ibm.icu.text.CaseMap;
import fencerow.checklist.AddCost;
import fencerow.explainers.Library;
import fencerow.match.Match;
import fencerow.match.Matcher;
import fencerow.match.Ranking;
import fencerow.needs.Job;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.printing.Handout.Imprint;
import fencerow.printing.Handout.MustHave;
import fencerow.printing.Handout.Tractor;
import fencerow.stock.AskingPrice;
import fencerow.stock.Condition;
import fencerow.stock.Unit;
import fencerow.terms.JobId;
import fencerow.terms.Money;
import fencerow.terms.UnitId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/**
 * Makes a visit's handout: the one way from answers to what is printed, for kiosk and command line alike.
 *
 * @param showroom what the visit is held against
 * @param phrases  the words and units the shopper chose
 * @param library  the explainers in the same language
 * @param imprint  what stands on every page
 */
public record Handouts(Showroom showroom, Phrases phrases, Library library, Imprint imprint) {
    private static final CaseMap.Title FIRST_LETTER_LARGE = CaseMap.toTitle().wholeString().noLowercase();

    /** What the visit's pages say. */
    public Handout of(Visit visit) {
        Needs needs = showroom.needs(visit);
        Ranking ranking = showroom.ranking(visit);
        Matcher matcher = new Matcher(showroom.catalogue());
        List<Unit> usual = usualUnits(ranking);
        List<MustHave> mustHaves = needs.musts().stream()
                .map(must -> new MustHave(
                        inFull(must), AddCost.usual(AddCost.of(matcher, usual, needs, must))))
                .toList();
        return new Handout(
                imprint,
                phrases.work(needs),
                mustHaves,
                showroom.checklist(visit, showroom.stakes(visit, ranking)),
                cautions(needs),
                tractors(visit, ranking, matcher, needs),
                library,
                visit.code());
    }

    /** The units whose prices say what adding something costs: those that can be made ready, else all. */
    private static List<Unit> usualUnits(Ranking ranking) {
        List<Match> matches = ranking.ready().isEmpty() ? ranking.matches() : ranking.ready();
        return matches.stream().map(Match::unit).toList();
    }

    /** As a line of its own: with a large first letter. */
    private String inFull(Requirement must) {
        return FIRST_LETTER_LARGE.apply(phrases.texts().locale(), null, phrases.requirement(must));
    }

    /** The first caution of each job, then the second of each and so on: the paper has room for a few only. */
    private List<String> cautions(Needs needs) {
        Set<JobId> wanted = needs.musts().stream()
                .flatMap(must -> must.why().job().stream())
                .collect(Collectors.toSet());
        List<List<String>> byJob = showroom.questionnaire().jobs().stream()
                .filter(job -> wanted.contains(job.id()))
                .map(Job::cautions)
                .toList();
        int most = byJob.stream().mapToInt(List::size).max().orElse(0);
        return IntStream.range(0, most)
                .boxed()
                .flatMap(turn -> byJob.stream().filter(each -> turn < each.size()).map(each -> each.get(turn)))
                .distinct()
                .toList();
    }

    /** The pinned units in the order pinned, then the second quote, as far as there are columns. */
    private List<Tractor> tractors(Visit visit, Ranking ranking, Matcher matcher, Needs needs) {
        List<UnitId> wanted = new ArrayList<>(visit.pinned());
        visit.secondQuote().map(Unit::id).filter(id -> !wanted.contains(id)).ifPresent(wanted::add);
        return wanted.stream()
                .flatMap(id -> ranking.matches().stream().filter(match -> match.unit().id().equals(id)))
                .limit(Handout.MOST_TRACTORS)
                .map(match -> tractor(match, visit, matcher, needs))
                .toList();
    }

    private Tractor tractor(Match match, Visit visit, Matcher matcher, Needs needs) {
        Unit unit = match.unit();
        boolean second = visit.secondQuote().map(Unit::id).equals(Optional.of(unit.id()));
        AskingPrice asking = unit.price();
        Money extras = asking.freight().plus(asking.setup()).plus(asking.fees());
        boolean hasPlan = match.verdict().hasPlan();
        return new Tractor(
                second ? "" : imprint.showroom(),
                unit.model().title(),
                yearAndHours(unit),
                asking.asking(),
                extras,
                asking.outTheDoor(),
                needs.musts().stream()
                        .flatMap(must -> AddCost.of(matcher, List.of(unit), needs, must).stream())
                        .toList(),
                hasPlan ? Optional.of(match.price().plan().plus(match.price().catchUp())) : Optional.empty(),
                match.price().trade(),
                hasPlan ? Optional.of(match.price().total()) : Optional.empty(),
                phrases.texts().get("verdict." + match.verdict().id() + ".name"));
    }

    private String yearAndHours(Unit unit) {
        String year = unit.year().isPresent() ? Integer.toString(unit.year().getAsInt()) : "";
        return unit.condition() == Condition.NEW || unit.hours().isEmpty()
                ? year
                : phrases.texts().get("paper.compare.year-and-hours",
                        Map.of("year", year, "hours", unit.hours().getAsInt()));
    }
}
