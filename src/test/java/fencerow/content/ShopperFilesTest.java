package fencerow.content;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.quiz.Belief;
import fencerow.quiz.Beliefs;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Files with what one shopper said. */
class ShopperFilesTest {
    @TempDir
    private Path folder;

    private Reading<Answers> answers(String text) {
        TinyContent tiny = TinyContent.copyTo(folder).write("shopper.yaml", text);
        return new AnswersReader(tiny.readGood().showroom().questionnaire()).read(folder.resolve("shopper.yaml"));
    }

    private Reading<Beliefs> beliefs(String text) {
        TinyContent tiny = TinyContent.copyTo(folder).write("shopper.yaml", text);
        return new BeliefsReader(tiny.readGood().showroom().quiz()).read(folder.resolve("shopper.yaml"));
    }

    private List<String> problems(Reading<?> reading) {
        return TinyContent.problems(reading).stream()
                .map(problem -> problem.toString().replace(folder + "/", ""))
                .toList();
    }

    @Test
    void answersAreOptionsAmountsAndNotSure() {
        Answers answers = TinyContent.good(answers(
                "answers: {jobs: [mow-lawn, move-pallets], tools: forks, door-height: 7 ft, budget: 18000 USD,\n"
                        + "  heaviest-lift: not-sure}"));
        assertEquals(Map.of(
                new QuestionId("jobs"), new Answer.Chosen(
                        List.of(new OptionId("mow-lawn"), new OptionId("move-pallets"))),
                new QuestionId("tools"), Answer.Chosen.of("forks"),
                new QuestionId("door-height"), new Answer.Measured(new Amount(Dimension.LENGTH, 7 * 0.3048)),
                new QuestionId("budget"), new Answer.Measured(new Amount(Dimension.MONEY, 18000)),
                new QuestionId("heaviest-lift"), new Answer.NotSure()), answers.byQuestion());
    }

    @Test
    void whatIsWrongWithAnswersIsAllNamed() {
        assertEquals(List.of(
                "shopper.yaml:2: the question [jobs] has no option [mow-lawns]; did you mean [mow-lawn]?",
                "shopper.yaml:3: there is no question [doorheight]; did you mean [door-height]?",
                "shopper.yaml:4: [lb] is a unit of mass; give a money in USD",
                "shopper.yaml:5: [-3 ac] is not above nothing; write an amount above 0"), problems(answers("""
                answers:
                  jobs: [mow-lawns]
                  doorheight: 7 ft
                  budget: 3 lb
                  mown-area: -3 ac
                """)));
    }

    @Test
    void anAmountBeyondTheKiosksOwnIsTakenWithAWarning() {
        Reading<Answers> reading = answers("answers: {jobs: [mow-lawn], mown-area: 40 ac}");
        assertEquals(2, TinyContent.good(reading).byQuestion().size());
        assertEquals(1, reading.warnings().size());
    }

    @Test
    void anAnswerThatNobodyWouldAskForIsNamed() {
        assertEquals(List.of("shopper.yaml:1: with these answers nobody asks [mown-area]; "
                + "take it out, or answer the question it hangs on"), answers("answers: {mown-area: 4 ac}").warnings()
                .stream().map(problem -> problem.toString().replace(folder + "/", "")).toList());
    }

    @Test
    void anOptionPickedTwiceIsNamed() {
        assertEquals(List.of("shopper.yaml:1: [mow-lawn] is picked twice; delete one of them"),
                problems(answers("answers: {jobs: [mow-lawn, mow-lawn]}")));
    }

    @Test
    void beliefsAreOptionsAndNotSure() {
        Beliefs beliefs = TinyContent.good(beliefs("beliefs: {quick-attach: comes-with-it, loader: not-sure,\n"
                + "  roll-bar: {option: can-be-added, sure: true}}"));
        assertEquals(Map.of(
                new QuestionId("quick-attach"), Belief.of(new OptionId("comes-with-it")),
                new QuestionId("loader"), Belief.NOT_SURE,
                new QuestionId("roll-bar"), new Belief(Optional.of(new OptionId("can-be-added")), true)),
                beliefs.byQuestion());
    }

    @Test
    void whatIsWrongWithBeliefsIsAllNamed() {
        assertEquals(List.of(
                "shopper.yaml:2: there is no quiz question [quickattach]; did you mean [quick-attach]?",
                "shopper.yaml:3: the quiz question [loader] has no option [come-with-it]; "
                        + "did you mean [comes-with-it]?"),
                problems(beliefs("beliefs:\n  quickattach: not-sure\n  loader: come-with-it\n")));
    }

    @Test
    void anotherKindOfFileIsNamed() {
        assertEquals(List.of("shopper.yaml:1: [beliefs] is missing; add beliefs: ..."),
                problems(beliefs("answers: {}")));
    }

    @Test
    void anEmptyFileIsNamed() {
        assertEquals(
                List.of("shopper.yaml:1: the file is empty; write answers: {...}"), problems(answers("# nothing")));
    }

    @Test
    void answersThatAreNoMapAreNamed() {
        assertEquals(List.of("shopper.yaml:1: keys with values belong here; write key: value"),
                problems(answers("answers: 3")));
    }
}
