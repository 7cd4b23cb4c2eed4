package fencerow.kiosk.compare;

import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.kit.Sign;
import fencerow.kiosk.matching.MatchWords;
import fencerow.match.Match;
import fencerow.match.Ranking;
import fencerow.match.Score;
import fencerow.needs.Requirement;
import fencerow.stock.Unit;
import fencerow.terms.Feature;
import fencerow.terms.Figure;
import fencerow.terms.Money;
import fencerow.terms.Payment;
import fencerow.terms.UnitId;
import fencerow.visit.Instead;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.InsteadWords;
import fencerow.wording.Phrases;
import fencerow.wording.Standing;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;

/** Sets units beside each other. */
public final class CompareInteractor {
    private static final List<Figure> FIGURES = List.of(Figure.ENGINE_POWER, Figure.PTO_POWER, Figure.TRACTOR_MASS,
            Figure.LOADER_LIFT, Figure.LOADER_HEIGHT, Figure.HITCH_LIFT, Figure.HYDRAULIC_FLOW, Figure.TIRE_WIDTH,
            Figure.HEIGHT);
    private static final String READY = "price.ready";
    private static final String PLAN = "price.plan";

    private final Showroom showroom;
    private final Phrases phrases;
    private final Texts texts;
    private final MatchWords words;

    /** In the language of the phrases. */
    public CompareInteractor(Showroom showroom, Phrases phrases) {
        this.showroom = showroom;
        this.phrases = phrases;
        this.texts = phrases.texts();
        this.words = new MatchWords(showroom, phrases);
    }

    /** The units of these ids that are still there, in the order of the ids. */
    public CompareModel model(List<UnitId> units, Outlook outlook) {
        Ranking ranking = outlook.ranking();
        Visit visit = outlook.visit();
        List<Match> matches = units.stream()
                .flatMap(id -> ranking.matches().stream().filter(match -> match.unit().id().equals(id)))
                .toList();
        Money longest = MatchWords.longest(matches);
        List<CompareModel.Group> all = List.of(
                new CompareModel.Group(texts.get("kiosk.compare.money"), money(matches)),
                new CompareModel.Group(texts.get("kiosk.compare.work"), work(matches, ranking, visit)),
                new CompareModel.Group(texts.get("kiosk.compare.machine"), machine(matches)),
                new CompareModel.Group(texts.get("kiosk.compare.equipment"), equipment(matches)));
        List<CompareModel.Group> differing = all.stream()
                .map(group -> new CompareModel.Group(group.name(),
                        group.rows().stream().filter(row -> !row.isSame()).toList()))
                .filter(group -> !group.rows().isEmpty())
                .toList();
        List<CompareModel.Row> same = all.stream()
                .flatMap(group -> group.rows().stream())
                .filter(CompareModel.Row::isSame)
                .toList();
        return new CompareModel(matches.stream().map(match -> words.card(match, ranking, visit, longest)).toList(),
                differing, same);
    }

    private List<CompareModel.Row> money(List<Match> matches) {
        return List.of(
                amounts(READY, matches, match -> match.price().total()),
                amounts("price.asking", matches, match -> Payment.exactly(match.price().asking().asking())),
                amounts("price.freight", matches, match -> Payment.exactly(match.price().asking().freight())),
                amounts("price.setup", matches, match -> Payment.exactly(match.price().asking().setup())),
                amounts("price.fees", matches, match -> Payment.exactly(match.price().asking().fees())),
                amounts("price.catch-up", matches, match -> Payment.of(match.price().catchUp())),
                amounts(PLAN, matches, match -> Payment.of(match.price().plan())),
                amounts("price.trade", matches, match -> Payment.exactly(Money.ZERO).less(match.price().trade())));
    }

    private CompareModel.Row amounts(String key, List<Match> matches, Function<Match, Payment> amount) {
        boolean ofPlan = key.equals(READY) || key.equals(PLAN);
        List<CompareModel.Cell> cells = matches.stream()
                .map(match -> plain(ofPlan && !match.verdict().hasPlan()
                        ? texts.get("kiosk.compare.no-plan")
                        : phrases.range(amount.apply(match))))
                .toList();
        boolean comparable = matches.size() == 2
                && (!ofPlan || matches.stream().allMatch(match -> match.verdict().hasPlan()));
        Optional<String> difference = comparable
                ? difference(amount.apply(matches.get(0)).middle(), amount.apply(matches.get(1)).middle())
                : Optional.empty();
        return new CompareModel.Row(texts.get(key), difference, cells);
    }

    private Optional<String> difference(Money first, Money second) {
        int order = first.compareTo(second);
        if (order == 0) {
            return Optional.empty();
        }
        Money more = order > 0 ? first.minus(second) : second.minus(first);
        return Optional.of(texts.get("kiosk.compare.less",
                Map.of("letter", order > 0 ? "B" : "A", "amount", phrases.money(more))));
    }

    private List<CompareModel.Row> work(List<Match> matches, Ranking ranking, Visit visit) {
        List<CompareModel.Row> rows = new ArrayList<>();
        rows.add(row(texts.get("kiosk.compare.verdict"), matches, match -> plain(words.verdict(match))));
        rows.add(row(texts.get("kiosk.compare.score"), matches, match -> plain(phrases.score(match))));
        rows.add(row(texts.get("concession.name"), matches, match -> plain(ranking.whatIf().concession(match)
                .map(phrases::concession)
                .orElseGet(() -> texts.get("concession.none")))));
        for (Requirement wish : ranking.needs().wishes()) {
            rows.add(row(phrases.requirement(wish), matches, match -> wish(wish, match.score())));
        }
        rows.addAll(instead(matches, ranking, visit));
        return rows.stream().distinct().toList();
    }

    /** What owning takes on each, beside the first other way of each job. */
    private List<CompareModel.Row> instead(List<Match> matches, Ranking ranking, Visit visit) {
        var insteadWords = new InsteadWords(phrases);
        List<List<Instead>> ways = matches.stream()
                .map(match -> Instead.first(showroom.instead(visit, ranking, match)))
                .toList();
        List<CompareModel.Row> rows = new ArrayList<>();
        for (int i = 0; !ways.isEmpty() && i < ways.get(0).size(); i++) {
            int place = i;
            Instead any = ways.get(0).get(i);
            String name = texts.get("kiosk.compare.instead",
                    Map.of("job", insteadWords.job(any), "way", insteadWords.way(any)));
            rows.add(new CompareModel.Row(name, Optional.empty(), ways.stream()
                    .map(all -> plain(insteadWords.owning(all.get(place))
                            .orElseGet(() -> texts.get("kiosk.compare.no-plan"))))
                    .toList()));
        }
        return rows;
    }

    private CompareModel.Cell wish(Requirement wish, Score score) {
        if (score.met().contains(wish)) {
            return new CompareModel.Cell(Optional.of(Sign.Kind.YES), texts.get("standing.there"));
        }
        return score.planned().contains(wish)
                ? new CompareModel.Cell(Optional.of(Sign.Kind.EXTRA), texts.get("standing.with-plan"))
                : new CompareModel.Cell(Optional.of(Sign.Kind.NO), texts.get("standing.missing"));
    }

    private List<CompareModel.Row> machine(List<Match> matches) {
        List<CompareModel.Row> rows = new ArrayList<>();
        rows.add(row(texts.get("kiosk.compare.where"), matches,
                match -> plain(phrases.labels().availability(match.unit()))));
        rows.add(row(texts.get("kiosk.compare.size"), matches,
                match -> plain(texts.get("class." + match.unit().model().machineClass().id()))));
        rows.add(row(texts.get("kiosk.compare.age"), matches, match -> plain(age(match.unit()))));
        for (Figure figure : FIGURES) {
            rows.add(row(texts.get("capability." + figure.id() + ".name"), matches,
                    match -> plain(match.unit().model().findFigure(figure).map(phrases::amount)
                            .orElseGet(() -> texts.get("kiosk.compare.unknown")))));
        }
        return rows;
    }

    private String age(Unit unit) {
        String condition = texts.get("condition-of-sale." + unit.condition().id());
        return unit.hours().isPresent()
                ? texts.get("kiosk.compare.hours", Map.of("condition", condition, "hours", unit.hours().getAsInt()))
                : condition;
    }

    private List<CompareModel.Row> equipment(List<Match> matches) {
        List<CompareModel.Row> rows = new ArrayList<>();
        for (Feature feature : showroom.catalogue().features()) {
            rows.add(row(phrases.labels().feature(feature.id()), matches, match -> {
                Standing standing = Standing.of(match.unit(), feature, showroom.catalogue(), phrases);
                return new CompareModel.Cell(Optional.of(MatchWords.sign(standing)), standing.words());
            }));
        }
        return rows;
    }

    private static CompareModel.Cell plain(String words) {
        return new CompareModel.Cell(Optional.empty(), words);
    }

    private static CompareModel.Row row(String name, List<Match> matches, Function<Match, CompareModel.Cell> cell) {
        return new CompareModel.Row(name, Optional.empty(), matches.stream().map(cell).toList());
    }
}
