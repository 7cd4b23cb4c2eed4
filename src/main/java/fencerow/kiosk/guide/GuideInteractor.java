package fencerow.kiosk.guide;

import fencerow.kiosk.frame.Outlook;
import fencerow.kiosk.matching.MatchWords;
import fencerow.match.Ranking;
import fencerow.needs.Answer;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Money;
import fencerow.visit.Showroom;
import fencerow.visit.Visit;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Thinks about what changes when must-haves and budget do. */
final class GuideInteractor {
    private static final int LINES = 6;
    private static final List<Long> STEPS = List.of(-5000L, -1000L, 1000L, 5000L);
    private static final double START = 20_000;

    private final Showroom showroom;
    private final Phrases phrases;
    private final Texts texts;
    private final MatchWords words;

    GuideInteractor(Showroom showroom, Phrases phrases) {
        this.showroom = showroom;
        this.phrases = phrases;
        this.texts = phrases.texts();
        this.words = new MatchWords(showroom, phrases);
    }

    /** How things stood when they began. Takes long. */
    Ranking ranking(Visit before) {
        return showroom.ranking(before);
    }

    GuideModel model(Outlook now, Optional<Ranking> before) {
        Ranking ranking = now.ranking();
        Visit visit = now.visit();
        int count = ranking.ready().size();
        return new GuideModel(count,
                texts.get("kiosk.results.summary", Map.of("count", count, "all", ranking.matches().size())),
                before.map(then -> changed(then, ranking)).orElse(List.of()),
                ranking.matches().stream().limit(LINES).map(match -> words.line(match, ranking, visit)).toList(),
                words.asked(visit, ranking),
                now.needs().budget().map(phrases::money).orElseGet(() -> texts.get("kiosk.guide.no-budget")),
                steps(now.needs().budget().isPresent()), visit.pinned().size());
    }

    private List<String> changed(Ranking before, Ranking now) {
        List<String> changed = new ArrayList<>();
        int then = before.ready().size();
        if (then != now.ready().size()) {
            changed.add(texts.get("kiosk.guide.ready", Map.of("before", then, "now", now.ready().size())));
        }
        if (!before.cheapest().equals(now.cheapest())) {
            changed.add(texts.get("kiosk.guide.lowest", Map.of(
                    "before", lowest(before.cheapest()), "now", lowest(now.cheapest()))));
        }
        return changed;
    }

    private String lowest(Optional<Money> price) {
        return price.map(phrases::money).orElseGet(() -> texts.get("kiosk.guide.none"));
    }

    private List<GuideModel.Step> steps(boolean budget) {
        List<GuideModel.Step> steps = new ArrayList<>();
        for (long by : STEPS) {
            steps.add(new GuideModel.Step(Optional.of(by), texts.get(by < 0 ? "kiosk.ask.less" : "kiosk.ask.more",
                    Map.of("amount", phrases.money(Money.ofDollars(Math.abs(by)))))));
        }
        if (budget) {
            steps.add(new GuideModel.Step(Optional.empty(), texts.get("kiosk.guide.drop-budget")));
        }
        return steps;
    }

    /** The visit with the budget changed by so many dollars, within the question's range; without one, from a start. */
    Visit budget(Visit visit, Optional<Long> by) {
        Optional<Question.Scale> scale =
                showroom.questionnaire().find(Questionnaire.BUDGET).flatMap(Question::scale);
        if (by.isEmpty() || scale.isEmpty()) {
            return visit.unanswered(Questionnaire.BUDGET);
        }
        double now = visit.answers().find(Questionnaire.BUDGET)
                .filter(Answer.Measured.class::isInstance)
                .map(answer -> ((Answer.Measured) answer).amount().si() + by.get())
                .orElse(START);
        double bounded = Math.max(scale.get().from().si(), Math.min(scale.get().to().si(), now));
        return visit.answered(Questionnaire.BUDGET, new Answer.Measured(new Amount(Dimension.MONEY, bounded)));
    }

    /** The visit as it was when they began, but for the pins and what was told since. */
    static Visit asItWas(Visit now, Visit before) {
        return new Visit(before.answers(), now.beliefs(), now.pinned(), before.setAside(), now.leftOut(),
                now.secondQuote(), now.tradeOffer());
    }
}
