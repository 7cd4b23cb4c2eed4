package fencerow.needs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Question.Choose;
import fencerow.needs.Question.Option;
import fencerow.needs.Rule.Level;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.JobId;
import fencerow.terms.Money;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import fencerow.terms.Threshold;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class QuestionnaireTest {
    private static final QuestionId JOBS = new QuestionId("jobs");
    private static final QuestionId SNOW_TOOL = new QuestionId("snow-tool");
    private static final QuestionId DRIVE = new QuestionId("drive-length");
    private static final QuestionId DOOR = new QuestionId("door-height");
    private static final StateId PARKED = new StateId("parked");

    private static final Questionnaire QUESTIONNAIRE = new Questionnaire(
            List.of(
                    new Question(JOBS, Choose.JOBS, Map.of(), List.of(), Optional.empty(), List.of()),
                    choice(DRIVE, whenSnow(), new Option(new OptionId("long"), 1,
                            List.of(flag("snow-tool")), List.of(), List.of())),
                    choice(SNOW_TOOL, whenSnow(), new Option(new OptionId("hire-it"), 1,
                            List.of(), List.of(), List.of(new JobId("clear-snow")))),
                    amount(DOOR, Dimension.LENGTH, new Rule(
                            new CapabilityId("height"),
                            Relation.AT_MOST,
                            new Level.Answered(new Amount(Dimension.LENGTH, -0.05)),
                            PARKED,
                            true,
                            1)),
                    amount(Questionnaire.BUDGET, Dimension.MONEY)),
            List.of(job("clear-snow"), job("mow-lawn")));

    private static Map<QuestionId, List<OptionId>> whenSnow() {
        return Map.of(JOBS, List.of(new OptionId("clear-snow")));
    }

    private static Question choice(QuestionId id, Map<QuestionId, List<OptionId>> when, Option option) {
        return new Question(id, Choose.ONE, when, List.of(option), Optional.empty(), List.of());
    }

    private static Question amount(QuestionId id, Dimension dimension, Rule... rules) {
        var scale = new Question.Scale(
                dimension, new Amount(dimension, 1), new Amount(dimension, 99999), new Amount(dimension, 1), List.of());
        return new Question(id, Choose.AMOUNT, Map.of(), List.of(), Optional.of(scale), List.of(rules));
    }

    private static Rule flag(String of) {
        return new Rule(
                new CapabilityId(of),
                Relation.AT_LEAST,
                new Level.Fixed(Amount.count(1)),
                Demand.ANY_STATE,
                true,
                1);
    }

    private static Job job(String id) {
        return new Job(new JobId(id), "group", List.of(), Map.of());
    }

    private static Answers answers(QuestionId question, Answer answer) {
        return Answers.NONE.with(question, answer);
    }

    private static List<String> asked(Needs needs) {
        return needs.requirements().stream().map(each -> each.demand().of().value()).toList();
    }

    @Test
    void chosenJobBecomesAMustWithTheAnswerAsItsReason() {
        Needs needs = QUESTIONNAIRE.needs(answers(JOBS, Answer.Chosen.of("mow-lawn")));

        Requirement must = needs.musts().get(0);
        assertEquals(new CapabilityId("does:mow-lawn"), must.demand().of());
        assertEquals(Optional.of(new JobId("mow-lawn")), must.why().job());
        assertEquals(JOBS, must.why().question());
    }

    @Test
    void hiredJobAsksNothingOfTheTractorNorDoQuestionsItBroughtUp() {
        Answers answers = answers(JOBS, Answer.Chosen.of("clear-snow"))
                .with(DRIVE, Answer.Chosen.of("long"))
                .with(SNOW_TOOL, Answer.Chosen.of("hire-it"));

        assertEquals(List.of(), asked(QUESTIONNAIRE.needs(answers)));
        assertTrue(QUESTIONNAIRE.applying(answers).stream().anyMatch(each -> each.id().equals(SNOW_TOOL)),
                "the question that took the job off can still be changed");
    }

    @Test
    void answerToAQuestionThatNoLongerAppliesAsksForNothingButIsKept() {
        Answers answers = answers(JOBS, Answer.Chosen.of("clear-snow")).with(DRIVE, Answer.Chosen.of("long"));
        Answers changed = answers.with(JOBS, Answer.Chosen.of("mow-lawn"));

        assertEquals(List.of("does:mow-lawn"), asked(QUESTIONNAIRE.needs(changed)));
        assertEquals(List.of(new OptionId("long")), changed.chosen(DRIVE));
    }

    @Test
    void amountIsAskedWithItsMargin() {
        Answers answers = answers(DOOR, new Answer.Measured(new Amount(Dimension.LENGTH, 2.15)));

        Demand demand = QUESTIONNAIRE.needs(answers).musts().get(0).demand();

        assertEquals(Threshold.of(new Amount(Dimension.LENGTH, 2.15 - 0.05)), demand.threshold());
        assertEquals(PARKED, demand.in());
    }

    @Test
    void notSureAndSkippedAskForNothing() {
        assertEquals(Needs.NONE, QUESTIONNAIRE.needs(Answers.NONE));
        assertEquals(Needs.NONE, QUESTIONNAIRE.needs(answers(DOOR, new Answer.NotSure())));
    }

    @Test
    void budgetIsNoRequirement() {
        Needs needs = QUESTIONNAIRE.needs(
                answers(Questionnaire.BUDGET, new Answer.Measured(new Amount(Dimension.MONEY, 18000))));

        assertEquals(Optional.of(Money.ofDollars(18000L)), needs.budget());
        assertEquals(List.of(), needs.requirements());
    }

    @Test
    void orderOfAnsweringMakesNoDifference() {
        Answer snow = Answer.Chosen.of("clear-snow");
        Answer drive = Answer.Chosen.of("long");

        assertEquals(
                QUESTIONNAIRE.needs(answers(JOBS, snow).with(DRIVE, drive)),
                QUESTIONNAIRE.needs(answers(DRIVE, drive).with(JOBS, snow)));
    }

    @Test
    void nextInOrderIsTheFirstOpenQuestionThatApplies() {
        assertEquals(JOBS, QUESTIONNAIRE.nextInOrder(Answers.NONE).orElseThrow().id());
        assertEquals(
                DOOR,
                QUESTIONNAIRE.nextInOrder(answers(JOBS, Answer.Chosen.of("mow-lawn"))).orElseThrow().id());
    }
}
