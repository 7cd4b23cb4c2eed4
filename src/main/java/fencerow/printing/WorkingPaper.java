package fencerow.printing;

import fencerow.desk.Counter;
import fencerow.desk.Tally;
import fencerow.desk.VisitBook;
import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.match.Verify;
import fencerow.needs.Needs;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * One page for the people who work here; it names nobody.
 *
 * @param template fills it in
 * @param values   of the template, lists apart
 * @param lists    of which only as much is printed as one page holds; each list's own rows, in order
 */
public record WorkingPaper(String template, Map<String, Object> values, Map<String, List<Map<String, Object>>> lists) {
    /** Templates of these papers. */
    static final List<String> TEMPLATES = List.of("lot-walk", "units-sheet");

    private static final int MOST_UNITS = 3;

    /** Copies the values. */
    public WorkingPaper {
        values = Map.copyOf(values);
        lists = Map.copyOf(lists);
    }

    /**
     * What nobody has checked on the units here, ordered by how many visits' verdicts each piece would have settled.
     *
     * @param counts of the visits looked at; what fewer than three visits hung on counts for nothing
     */
    public static WorkingPaper lotWalk(Showroom showroom, Tally counts, Phrases phrases) {
        record Piece(Unit unit, Feature feature, long settled) {}
        List<Piece> pieces = new ArrayList<>();
        for (Unit unit : showroom.units()) {
            for (Feature feature : showroom.catalogue().features()) {
                if (unit.fact(feature.id()) instanceof Fact.Unverified) {
                    long settled = counts.count(new Counter(
                            Counter.Kind.UNIT_UNCHECKED, unit.id().value(), feature.id().value()));
                    pieces.add(new Piece(unit, feature, settled < VisitBook.FEWEST ? 0 : settled));
                }
            }
        }
        // The sort is stable: what counts alike stays by unit.
        pieces.sort(Comparator.comparingLong(Piece::settled).reversed());
        List<Map<String, Object>> rows = pieces.stream()
                .map(piece -> Map.<String, Object>of(
                        "unit", phrases.labels().unit(piece.unit()),
                        "id", piece.unit().id().value(),
                        "piece", phrases.labels().feature(piece.feature().id()),
                        "how", phrases.texts().get("feature." + piece.feature().id() + ".check"),
                        "settled", piece.settled() == 0 ? "" : Long.toString(piece.settled())))
                .toList();
        return new WorkingPaper("lot-walk", Map.of("none", rows.isEmpty()), Map.of("rows", rows));
    }

    /** The pinned units of a visit: what each takes to do the shopper's work, and what to look at first. */
    public static WorkingPaper unitsSheet(Showroom showroom, Visit visit, Phrases phrases) {
        Needs needs = showroom.needs(visit);
        Ranking ranking = showroom.ranking(visit);
        List<Map<String, Object>> units = visit.pinned().stream()
                .flatMap(id -> ranking.matches().stream().filter(match -> match.unit().id().equals(id)))
                .limit(MOST_UNITS)
                .map(match -> unit(match, showroom, phrases))
                .toList();
        String work = phrases.work(needs);
        return new WorkingPaper("units-sheet", Map.of(
                "none", units.isEmpty(),
                "work", work.isEmpty()
                        ? phrases.texts().get("paper.work.none")
                        : phrases.texts().get("paper.work.line", Map.of("work", work))), Map.of("units", units));
    }

    private static Map<String, Object> unit(Match match, Showroom showroom, Phrases phrases) {
        boolean ready = match.verdict().hasPlan();
        List<String> plan = match.findPlan().stream()
                .flatMap(found -> found.lines().stream())
                .map(line -> phrases.texts().get("paper.units-sheet.plan-line", Map.of(
                        "what", phrases.planLine(line),
                        "price", line.price().isZero()
                                ? phrases.texts().get("price.yours")
                                : phrases.range(line.price()))))
                .toList();
        Map<String, Object> unit = new HashMap<>();
        unit.put("title", phrases.labels().unit(match.unit()));
        unit.put("id", match.unit().id().value());
        unit.put("where", phrases.labels().availability(match.unit()));
        unit.put("verdict", phrases.texts().get("verdict." + match.verdict().id() + ".name"));
        unit.put("priceName", phrases.texts().get(ready ? "price.ready" : "price.as-it-stands"));
        unit.put("price", phrases.range(match.price().total()));
        unit.put("plan", plan);
        unit.put("ready", ready && plan.isEmpty());
        unit.put("verify", verify(match, showroom, phrases));
        return unit;
    }

    /** What this shopper's answer hangs on, then what else nobody has checked. */
    private static List<String> verify(Match match, Showroom showroom, Phrases phrases) {
        List<String> all = new ArrayList<>(match.verify().stream()
                .sorted(Comparator.comparing(Verify::flips).reversed())
                .map(phrases::verify)
                .toList());
        Set<FeatureId> told = match.verify().stream().map(Verify::feature).collect(Collectors.toSet());
        showroom.catalogue().features().stream()
                .map(Feature::id)
                .filter(id -> !told.contains(id) && match.unit().fact(id) instanceof Fact.Unverified)
                .forEach(id -> all.add(phrases.labels().feature(id)));
        return all;
    }

    /** How long its longest list is. */
    int longest() {
        return lists.values().stream().flatMap(List::stream)
                .flatMap(row -> row.values().stream())
                .filter(List.class::isInstance)
                .mapToInt(inner -> ((List<?>) inner).size())
                .reduce(lists.values().stream().mapToInt(List::size).max().orElse(0), Math::max);
    }

    /** The values with no more of each list, and of each list within its rows, than so many; the rest is counted. */
    Map<String, Object> valuesUpTo(int most, Phrases phrases) {
        Map<String, Object> all = new HashMap<>(values);
        lists.forEach((name, rows) -> {
            all.put(name, rows.stream().limit(Math.max(most, 1)).map(row -> shortened(row, most, phrases)).toList());
            all.put("more", more(rows.size() - most, phrases));
        });
        return all;
    }

    private static Map<String, Object> shortened(Map<String, Object> row, int most, Phrases phrases) {
        Map<String, Object> shorter = new HashMap<>(row);
        row.forEach((name, value) -> {
            if (value instanceof List<?> inner) {
                shorter.put(name, inner.stream().limit(most).toList());
                shorter.put(name + "More", more(inner.size() - most, phrases));
            }
        });
        return shorter;
    }

    private static String more(int left, Phrases phrases) {
        return left > 0 ? phrases.texts().get("paper.must-haves.more", Map.of("count", left)) : "";
    }
}
