package fencerow.kiosk.matching;

import fencerow.kiosk.kit.Sign;
import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.needs.Needs;
import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import fencerow.visit.Instead;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.InsteadWords;
import fencerow.wording.Phrases;
import fencerow.wording.Reasons;
import fencerow.wording.Standing;
import fencerow.wording.Texts;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/** Puts matches, and what was asked for, into words that several screens show. Knows no JavaFX. */
public final class MatchWords {
    private static final int MOST = 8;

    /** How many reasons a card has room for. */
    private record Room(int speaksFor, int speaksAgainst, int toCheck) {
        static final Room LITTLE = new Room(2, 2, 2);
        static final Room ENOUGH = new Room(MOST, MOST, MOST);
    }

    private final Showroom showroom;
    private final Phrases phrases;
    private final Texts texts;
    private final Reasons reasons;

    /** In the language of the phrases. */
    public MatchWords(Showroom showroom, Phrases phrases) {
        this.showroom = showroom;
        this.phrases = phrases;
        this.texts = phrases.texts();
        this.reasons = new Reasons(phrases);
    }

    /** The unit's name; another seller's as such. */
    public String title(Unit unit, Visit visit) {
        boolean told = visit.secondQuote().filter(unit::equals).isPresent();
        return told ? texts.get("unit.second-quote") : phrases.labels().unit(unit);
    }

    /** The name of a verdict. */
    public String verdict(Match match) {
        return texts.get("verdict." + match.verdict().id() + ".name");
    }

    /** The match as a card with the weightiest reasons; {@code longest} is the highest price beside it. */
    public UnitCard card(Match match, Ranking ranking, Visit visit, Money longest) {
        return card(match, ranking, visit, longest, Room.LITTLE);
    }

    /** The match as a card with all its reasons. */
    public UnitCard wholeCard(Match match, Ranking ranking, Visit visit) {
        return card(match, ranking, visit, longest(List.of(match)), Room.ENOUGH);
    }

    private UnitCard card(Match match, Ranking ranking, Visit visit, Money longest, Room room) {
        PriceRange further = match.price().plan().plus(match.price().catchUp());
        Money afterTrade = match.price().asking().outTheDoor().minus(match.price().trade());
        Money asked = afterTrade.cents() > 0 ? afterTrade : Money.ZERO;
        return new UnitCard(match.unit().id(), match.verdict(), verdict(match), title(match.unit(), visit),
                where(match.unit(), visit), price(match), afterTrade(match, priceParts(match, further)),
                new UnitCard.Bar(asked, further, longest), phrases.score(match),
                first(reasons.speaksFor(match, ranking.needs()), room.speaksFor()),
                first(against(match, ranking, visit), room.speaksAgainst()),
                reasons.toCheck(match, room.toCheck()),
                visit.pinned().contains(match.unit().id()));
    }

    private String where(Unit unit, Visit visit) {
        return visit.secondQuote().filter(unit::equals).isPresent()
                ? texts.get("kiosk.results.elsewhere")
                : phrases.labels().availability(unit);
    }

    private List<String> against(Match match, Ranking ranking, Visit visit) {
        Optional<String> beaten = ranking.beatenBy(match).map(other -> texts.get("kiosk.results.beaten",
                Map.of("unit", title(other.unit(), visit))));
        return Stream.concat(beaten.stream(), reasons.speaksAgainst(match, ranking).stream()).toList();
    }

    private static List<String> first(List<String> all, int most) {
        return all.subList(0, Math.min(most, all.size()));
    }

    /** Ready to work, or as it stands where it cannot be made ready. */
    public String price(Match match) {
        return phrases.range(match.price().total());
    }

    private String afterTrade(Match match, String parts) {
        return match.price().trade().cents() == 0 ? parts : texts.get("kiosk.results.traded", Map.of("parts", parts));
    }

    private String priceParts(Match match, PriceRange further) {
        if (!match.verdict().hasPlan()) {
            return texts.get(match.price().catchUp().isZero()
                    ? "kiosk.results.as-it-stands"
                    : "kiosk.results.as-it-stands-catch-up");
        }
        if (further.isZero()) {
            return texts.get("kiosk.results.nothing-to-add");
        }
        String what = match.price().plan().isZero() ? "catch-up" : match.price().catchUp().isZero() ? "plan" : "both";
        return texts.get("kiosk.results.parts." + what, Map.of("further", phrases.range(further)));
    }

    /** The match on a line. */
    public UnitLine line(Match match, Ranking ranking, Visit visit) {
        String remark = match.verdict().hasPlan()
                ? phrases.score(match)
                : against(match, ranking, visit).stream().findFirst().orElse(phrases.score(match));
        return new UnitLine(match.unit().id(), match.verdict(), verdict(match), title(match.unit(), visit),
                price(match), match.overBudget().map(over -> texts.get("price.over-budget",
                        Map.of("amount", phrases.money(over)))).orElse(remark),
                visit.pinned().contains(match.unit().id()));
    }

    /** The highest price of the matches; 1 dollar if there is none. */
    public static Money longest(List<Match> matches) {
        return matches.stream()
                .map(match -> match.price().total().high())
                .max(Comparator.naturalOrder())
                .filter(highest -> highest.cents() > 0)
                .orElse(Money.ofDollars(1));
    }

    /** What the visit asks for, and what the ranking says would change the answer. */
    public Asked asked(Visit visit, Ranking ranking) {
        Needs all = showroom.questionnaire().needs(visit.answers());
        Needs now = showroom.needs(visit);
        List<Instead> ways = Instead.first(showroom.elsewhere(all.jobs()));
        List<Asked.Must> musts = all.musts().stream()
                .filter(must -> now.requirements().contains(must) || visit.setAside().contains(must.id()))
                .map(must -> must(must, ways, !visit.setAside().contains(must.id())))
                .toList();
        var words = new InsteadWords(phrases);
        List<Asked.Elsewhere> elsewhere = Instead.first(showroom.elsewhere(all.hired())).stream()
                .map(each -> new Asked.Elsewhere(words.job(each), words.chosen(each)))
                .toList();
        List<String> wishes = all.wishes().stream().map(phrases::requirement).distinct().toList();
        return new Asked(musts, elsewhere, wishes, all.budget().map(phrases::money), changes(ranking),
                ranking.whatIf().budget().map(phrases::change));
    }

    private Asked.Must must(Requirement must, List<Instead> ways, boolean counts) {
        var words = new InsteadWords(phrases);
        Optional<String> instead = ways.stream()
                .filter(way -> must.why().job().equals(Optional.of(way.job().id())))
                .findFirst()
                .map(way -> counts ? words.way(way) : words.chosen(way));
        return new Asked.Must(must.id(), must(must), instead, counts);
    }

    /** A must-have as a label. */
    public String must(Requirement must) {
        return must.why().job()
                .map(job -> texts.get("job." + job + ".name"))
                .orElseGet(() -> phrases.requirement(must));
    }

    private List<Asked.Change> changes(Ranking ranking) {
        return ranking.whatIf().changes().stream()
                .map(change -> new Asked.Change(change.dropped().id(), phrases.change(change)))
                .toList();
    }

    /** The sign of how a feature stands. */
    public static Sign.Kind sign(Standing standing) {
        return switch (standing.kind()) {
            case THERE -> Sign.Kind.YES;
            case EXTRA -> Sign.Kind.EXTRA;
            case MISSING -> Sign.Kind.NO;
            case NEVER -> Sign.Kind.NEVER;
            case UNKNOWN -> Sign.Kind.UNKNOWN;
        };
    }
}
