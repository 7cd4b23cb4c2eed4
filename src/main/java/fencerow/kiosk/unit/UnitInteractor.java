package fencerow.kiosk.unit;

import fencerow.explainers.Library;
import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.frame.Place;
import fencerow.kiosk.matching.MatchWords;
import fencerow.match.Finding;
import fencerow.match.Match;
import fencerow.match.Plan;
import fencerow.match.Ranking;
import fencerow.needs.Job;
import fencerow.needs.Questionnaire;
import fencerow.stock.Catalogue;
import fencerow.terms.Feature;
import fencerow.terms.Figure;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import fencerow.terms.UnitId;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Bill;
import fencerow.wording.InsteadWords;
import fencerow.wording.Phrases;
import fencerow.wording.SizingWords;
import fencerow.wording.Standing;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** Puts one unit into words. */
final class UnitInteractor {
    private static final List<Figure> SHOWN = List.of(Figure.ENGINE_POWER, Figure.PTO_POWER, Figure.TRACTOR_MASS,
            Figure.LOADER_LIFT, Figure.LOADER_HEIGHT, Figure.HITCH_LIFT, Figure.HYDRAULIC_FLOW, Figure.TIRE_WIDTH,
            Figure.HEIGHT);
    private static final int MINUTES_IN_AN_HOUR = 60;

    private final Showroom showroom;
    private final Phrases phrases;
    private final Texts texts;
    private final MatchWords words;
    private final UnitDrawing drawing;
    private final FigureWords figureWords;

    UnitInteractor(Showroom showroom, Library library, Phrases phrases, SizingWords sizing) {
        this.figureWords = new FigureWords(sizing);
        this.showroom = showroom;
        this.phrases = phrases;
        this.texts = phrases.texts();
        this.words = new MatchWords(showroom, phrases);
        this.drawing = new UnitDrawing(showroom.catalogue(), library, phrases);
    }

    /** The unit as it stands in the outlook; empty if it is not there any more. */
    Optional<UnitModel> model(UnitId unit, Outlook outlook) {
        return outlook.ranking().matches().stream()
                .filter(match -> match.unit().id().equals(unit))
                .findFirst()
                .map(match -> model(match, outlook));
    }

    private UnitModel model(Match match, Outlook outlook) {
        Ranking ranking = outlook.ranking();
        Visit visit = outlook.visit();
        return new UnitModel(words.wholeCard(match, ranking, visit),
                texts.get("verdict." + match.verdict().id() + ".says"), Bill.of(match, phrases), notes(match),
                match.findPlan().map(plan -> plan(plan, match)), causes(match, ranking),
                new InsteadWords(phrases).first(showroom.instead(visit, ranking, match)), drawing.of(match.unit()),
                figures(match), sums(visit, match),
                stops(match, outlook), cautions(ranking));
    }

    private List<String> notes(Match match) {
        List<String> notes = new ArrayList<>();
        match.price().asking().promo().ifPresent(promo ->
                notes.add(texts.get("kiosk.unit.promo", Map.of("amount", phrases.money(promo)))));
        match.overBudget().ifPresent(over ->
                notes.add(texts.get("price.over-budget", Map.of("amount", phrases.money(over)))));
        notes.add(texts.get("price.tax-note"));
        return notes;
    }

    private UnitModel.PlanPart plan(Plan plan, Match match) {
        List<UnitModel.PlanLine> lines = plan.lines().stream()
                .map(line -> new UnitModel.PlanLine(phrases.planLine(line),
                        line.price().isZero() ? texts.get("price.yours") : phrases.range(line.price()), about(line)))
                .toList();
        Optional<String> better = match.finding() instanceof Finding.Feasible feasible
                ? feasible.withoutStopgap().map(other -> phrases.better(plan, other))
                : Optional.empty();
        int hours = (plan.minutes() + MINUTES_IN_AN_HOUR - 1) / MINUTES_IN_AN_HOUR;
        Optional<String> fitting = hours == 0
                ? Optional.empty()
                : Optional.of(texts.get("plan.fitting", Map.of("hours", hours)));
        return new UnitModel.PlanPart(lines, better, fitting);
    }

    private Optional<String> about(Plan.Line line) {
        Optional<String> tradeOff = texts.find("attachment." + line.item() + ".trade-off");
        return line.stopgap() ? Optional.of(texts.get("plan.stopgap")) : tradeOff;
    }

    private List<String> causes(Match match, Ranking ranking) {
        if (match.verdict().hasPlan() || !(match.finding() instanceof Finding.Infeasible infeasible)) {
            return List.of();
        }
        Stream<String> blocked = infeasible.why().stream().map(each -> phrases.blocked(each, match)).distinct();
        Stream<String> concession = ranking.whatIf().concession(match).stream().map(phrases::concession);
        return Stream.concat(blocked, concession).toList();
    }

    private List<Bill.Line> figures(Match match) {
        return SHOWN.stream()
                .flatMap(figure -> match.unit().model().findFigure(figure).stream()
                        .map(amount -> new Bill.Line(
                                texts.get("capability." + figure.id() + ".name"), phrases.amount(amount))))
                .toList();
    }

    private List<UnitModel.SumLine> sums(Visit visit, Match match) {
        return showroom.figures(visit, match).stream()
                .map(each -> new UnitModel.SumLine(figureWords.name(each), figureWords.value(each),
                        figureWords.notes(each), new Place.Worksheet(each.kind().calculation(),
                                Optional.of(match.unit().id()), each.given(), false, 0)))
                .toList();
    }

    private List<UnitModel.StopPart> stops(Match match, Outlook outlook) {
        Catalogue catalogue = showroom.catalogue();
        List<UnitModel.StopPart> parts = new ArrayList<>();
        for (Stop stop : Stop.values()) {
            List<UnitModel.FeatureLine> lines = catalogue.features().stream()
                    .filter(feature -> feature.stop() == stop)
                    .map(feature -> line(match, feature, outlook))
                    .toList();
            if (!lines.isEmpty()) {
                parts.add(new UnitModel.StopPart(texts.get("stop." + stop.id()), lines));
            }
        }
        return parts;
    }

    private UnitModel.FeatureLine line(Match match, Feature feature, Outlook outlook) {
        Standing standing = Standing.of(match.unit(), feature, showroom.catalogue(), phrases);
        return new UnitModel.FeatureLine(new TopicId(feature.id().value()), phrases.labels().feature(feature.id()),
                MatchWords.sign(standing), standing.words(),
                outlook.stakes().relevance().requirement(feature.id()).isPresent());
    }

    private List<String> cautions(Ranking ranking) {
        Questionnaire questionnaire = showroom.questionnaire();
        Set<String> ids = new LinkedHashSet<>();
        ranking.needs().musts().forEach(must -> must.why().job().ifPresent(id -> questionnaire.jobs().stream()
                .filter(job -> job.id().equals(id))
                .map(Job::cautions)
                .forEach(ids::addAll)));
        return ids.stream().map(id -> texts.get("caution." + id)).toList();
    }
}
