package fencerow.visit;

import fencerow.checklist.ChecklistLine;
import fencerow.checklist.Composer.Looking;
import fencerow.checklist.Composer;
import fencerow.checklist.Relevance;
import fencerow.checklist.Stakes;
import fencerow.checklist.Weights;
import fencerow.match.Lot;
import fencerow.match.Match;
import fencerow.match.Matcher;
import fencerow.match.Ranking;
import fencerow.needs.Needs;
import fencerow.needs.Questionnaire;
import fencerow.needs.Requirement;
import fencerow.quiz.Quiz;
import fencerow.quiz.QuizQuestion;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.AnswerCount;
import fencerow.terms.AtStake;
import fencerow.terms.JobId;
import fencerow.terms.MachineClass;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.util.EnumSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * What one visit's answers come to in this showroom. Immutable: new content or stock makes a new one.
 *
 * @param catalogue     what the trade offers
 * @param questionnaire about the shopper's work
 * @param quiz          about the shopper's beliefs
 * @param composer      of the list
 * @param weights       how much relevance counts
 * @param lot           units in stock, in transit and orderable
 * @param workbook      calculations a shopper can do
 */
public record Showroom(
        Catalogue catalogue,
        Questionnaire questionnaire,
        Quiz quiz,
        Composer composer,
        Weights weights,
        Lot lot,
        Workbook workbook) {
    private static final QuestionId NEW_OR_USED = new QuestionId("new-or-used");
    private static final OptionId NEW_ONLY = new OptionId("new-only");

    /** Lays out the units. */
    public static Showroom of(
            Catalogue catalogue,
            Questionnaire questionnaire,
            Quiz quiz,
            Composer composer,
            Weights weights,
            List<Unit> units,
            Workbook workbook) {
        return new Showroom(
                catalogue, questionnaire, quiz, composer, weights, new Matcher(catalogue).lot(units), workbook);
    }

    /** Units in stock, in transit and orderable. */
    public List<Unit> units() {
        return lot.units();
    }

    /** The same with other units. */
    public Showroom with(List<Unit> other) {
        return of(catalogue, questionnaire, quiz, composer, weights, other, workbook);
    }

    /** The same with what shoppers have answered in the quiz so far. */
    public Showroom learned(Map<QuestionId, AnswerCount> answers) {
        return new Showroom(catalogue, questionnaire, quiz.with(answers), composer, weights, lot, workbook);
    }

    /**
     * What the answers ask for, must-haves set aside left out. A job set aside is done another way, so that nothing is
     * asked for its sake.
     */
    public Needs needs(Visit visit) {
        Needs all = questionnaire.needs(visit.answers(), setAside(visit));
        for (Requirement requirement : all.requirements()) {
            if (visit.setAside().contains(requirement.id())) {
                all = all.without(requirement);
            }
        }
        return all;
    }

    /** Questions that nobody needs answered now: they came up for the sake of jobs that are set aside. */
    public Set<QuestionId> idleQuestions(Visit visit) {
        Set<QuestionId> idle = new LinkedHashSet<>();
        questionnaire.applying(visit.answers()).forEach(question -> idle.add(question.id()));
        questionnaire.applying(visit.answers(), setAside(visit)).forEach(question -> idle.remove(question.id()));
        return idle;
    }

    private Set<JobId> setAside(Visit visit) {
        return questionnaire.needs(visit.answers()).musts().stream()
                .filter(must -> visit.setAside().contains(must.id()))
                .flatMap(must -> must.why().job().stream())
                .collect(Collectors.toSet());
    }

    /** How the jobs asked for can be done without the unit, beside what owning takes; in the order of the jobs. */
    public List<Instead> instead(Visit visit, Ranking ranking, Match match) {
        return Instead.of(questionnaire, visit.answers(), ranking, match);
    }

    /** How these jobs can be done without any tractor; in the order of the jobs. */
    public List<Instead> elsewhere(Set<JobId> jobs) {
        return Instead.elsewhere(questionnaire, jobs);
    }

    /** Every unit here, and the shopper's second quote, held against the needs. */
    public Ranking ranking(Visit visit) {
        return Ranking.of(units(visit), needs(visit));
    }

    /** The same; whatever comes out as in a ranking worked out before is not worked out again. */
    public Ranking ranking(Visit visit, Ranking before) {
        return before.next(units(visit), needs(visit));
    }

    private Lot units(Visit visit) {
        return visit.secondQuote().map(lot::with).orElse(lot).allowing(visit.tradeOffer());
    }

    /** What wrong beliefs cost this shopper, given the ranking of their needs. */
    public Stakes stakes(Visit visit, Ranking ranking) {
        Relevance relevance = Relevance.of(catalogue, needs(visit), ranking);
        Set<MachineClass> classes = EnumSet.noneOf(MachineClass.class);
        ranking.ready().forEach(match -> classes.add(match.unit().model().machineClass()));
        if (classes.isEmpty()) {
            units().forEach(unit -> classes.add(unit.model().machineClass()));
        }
        return new Stakes(catalogue, classes, relevance, weights);
    }

    /** What calculations say of a unit, equipped as its match says. */
    public List<UnitFigure> figures(Visit visit, Match match) {
        return UnitFigure.of(match, visit.answers(), workbook, catalogue);
    }

    /** The quiz question to ask next: the one with the most at stake; where several have that, the seed decides. */
    public Optional<QuizQuestion> nextQuizQuestion(Visit visit, Stakes stakes, long seed) {
        return quiz.next(visit.beliefs(), question -> worth(question, stakes), seed);
    }

    private static Quiz.Worth worth(QuizQuestion question, Stakes stakes) {
        return question.feature()
                .map(feature -> new Quiz.Worth(stakes.of(feature), stakes.weight(feature)))
                .orElse(new Quiz.Worth(AtStake.NOTHING, stakes.weights().other()));
    }

    /** The shopper's list; lines struck out are left out. */
    public List<ChecklistLine> checklist(Visit visit, Stakes stakes) {
        var numbers = new LineNumbers(needs(visit), catalogue, workbook, stakes.classes());
        return composer.without(visit.leftOut()).compose(stakes, quiz, visit.beliefs(), looking(visit)).stream()
                .map(numbers::on)
                .toList();
    }

    private static Looking looking(Visit visit) {
        List<OptionId> chosen = visit.answers().chosen(NEW_OR_USED);
        return chosen.equals(List.of(NEW_ONLY)) ? Looking.NEW : Looking.BOTH;
    }
}
