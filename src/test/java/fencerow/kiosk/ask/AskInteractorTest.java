package fencerow.kiosk.ask;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.explainers.Pictures;
import fencerow.kiosk.Rooms;
import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.needs.Questionnaire;
import fencerow.terms.QuestionId;
import fencerow.visit.Showroom;
import fencerow.wording.AnswerWords;
import fencerow.wording.Phrases;
import fencerow.wording.Quantities;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import org.junit.jupiter.api.Test;

class AskInteractorTest {
    private static final Showroom SHOWROOM = Rooms.premises().showroom();
    private static final AskInteractor ASK = new AskInteractor(SHOWROOM, words(false), Pictures.NONE);
    private static final QuestionId JOBS = new QuestionId("jobs");

    private static AnswerWords words(boolean metric) {
        Phrases phrases = new Phrases(
                Rooms.premises().texts().get("en"), new Quantities(Locale.US, metric)::show);
        return new AnswerWords(phrases, metric);
    }

    private static Question question(String id) {
        return SHOWROOM.questionnaire().find(new QuestionId(id)).orElseThrow();
    }

    @Test
    void nothingIsPresetInAnyQuestion() {
        for (Question question : SHOWROOM.questionnaire().questions()) {
            assertEquals(AskModel.Given.NOTHING, ASK.given(question, Answers.NONE), question.id().value());
        }
    }

    @Test
    void everyJobIsDrawnAndWithoutDrawingsTheWordsAreLeft() {
        Pictures pictures = Optional.ofNullable(Rooms.premises().libraries().get("en")).orElseThrow().pictures();
        var drawn = new AskInteractor(SHOWROOM, words(false), pictures);
        List<AskModel.Tile> tiles = drawn.card(question("jobs"), Answers.NONE, false).tiles();
        assertEquals(List.of(), tiles.stream().filter(tile -> tile.sketch().isEmpty()).toList());
        List<AskModel.Tile> plain = ASK.card(question("jobs"), Answers.NONE, false).tiles();
        assertEquals(tiles.stream().map(AskModel.Tile::words).toList(),
                plain.stream().map(AskModel.Tile::words).toList());
        assertEquals(List.of(), plain.stream().filter(tile -> tile.sketch().isPresent()).toList());
    }

    @Test
    void severalCanBePickedAndLetGoAgain() {
        Answers one = with(Answers.NONE, JOBS, ASK.picked(question("jobs"), Answers.NONE, "mow-lawn"));
        Answers two = with(one, JOBS, ASK.picked(question("jobs"), one, "clear-snow"));
        assertEquals(Set.of("mow-lawn", "clear-snow"), ASK.given(question("jobs"), two).keys());
        Answers back = with(two, JOBS, ASK.picked(question("jobs"), two, "mow-lawn"));
        assertEquals(Set.of("clear-snow"), ASK.given(question("jobs"), back).keys());
        assertEquals(Optional.empty(), ASK.picked(question("jobs"), back, "clear-snow"));
    }

    private static Answers with(Answers answers, QuestionId question, Optional<Answer> answer) {
        return answers.with(question, answer.orElseThrow());
    }

    @Test
    void anAmountStaysOnItsScaleHoweverOftenItIsStepped() {
        Question budget = question("budget");
        Question.Scale scale = budget.scale().orElseThrow();
        Answers answers = Answers.NONE;
        for (int i = 0; i < 400; i++) {
            answers = with(answers, budget.id(), ASK.changed(budget, answers, -10));
        }
        assertEquals(scale.from().si(), amount(answers, budget), 1e-9);
        for (int i = 0; i < 400; i++) {
            answers = with(answers, budget.id(), ASK.changed(budget, answers, 10));
        }
        assertEquals(scale.to().si(), amount(answers, budget), 1e-9);
    }

    private static double amount(Answers answers, Question question) {
        return ((Answer.Measured) answers.find(question.id()).orElseThrow()).amount().si();
    }

    @Test
    void steppingUpAndDownAgainLeadsBackToACommonAmountExactly() {
        Question door = question("door-height");
        String sevenFeet = ASK.card(door, Answers.NONE, false).tiles().get(0).key();
        Answers picked = with(Answers.NONE, door.id(), ASK.picked(door, Answers.NONE, sevenFeet));
        Answers there = picked;
        for (int step : new int[] {1, 1, 10, -1, -10, -1}) {
            there = with(there, door.id(), ASK.changed(door, there, step));
        }
        assertEquals(Set.of(sevenFeet), ASK.given(door, there).keys());
    }

    @Test
    void doorsAreTalkedOfInFeetAndInches() {
        Question door = question("door-height");
        Answers picked = with(Answers.NONE, door.id(),
                ASK.picked(door, Answers.NONE, ASK.card(door, Answers.NONE, false).tiles().get(0).key()));
        assertEquals(Optional.of("7 ft"), ASK.given(door, picked).amount());
        Answers more = with(picked, door.id(), ASK.changed(door, picked, 1));
        assertEquals(Optional.of("7 ft 3 in"), ASK.given(door, more).amount());
    }

    @Test
    void skippedQuestionsAreNotAskedAgainOnTheWayThroughAndNoneIsAskedTwice() {
        Answers answers = Answers.NONE.with(JOBS, Answer.Chosen.of("clear-snow"));
        Set<QuestionId> skipped = new HashSet<>();
        Set<QuestionId> seen = new HashSet<>(Set.of(JOBS));
        Optional<QuestionId> next = ASK.after(JOBS, answers, skipped, Optional.empty());
        while (next.isPresent()) {
            assertTrue(seen.add(next.get()), () -> "asked twice: " + seen);
            skipped.add(next.get());
            next = ASK.after(next.get(), answers, skipped, Optional.empty());
        }
        List<QuestionId> applying = SHOWROOM.questionnaire().applying(answers).stream().map(Question::id).toList();
        assertEquals(Set.copyOf(applying), seen);
    }

    @Test
    void aSuggestedQuestionComesNextAsLongAsItIsOpen() {
        Answers answers = Answers.NONE.with(JOBS, Answer.Chosen.of("clear-snow"));
        QuestionId budget = Questionnaire.BUDGET;
        assertEquals(Optional.of(budget), ASK.after(JOBS, answers, Set.of(), Optional.of(budget)));
        assertFalse(ASK.after(JOBS, answers, Set.of(budget), Optional.of(budget)).equals(Optional.of(budget)));
    }

    @Test
    void progressTellsHowManyQuestionsApplyNow() {
        Answers answers = Answers.NONE.with(JOBS, Answer.Chosen.of("clear-snow"));
        AskModel.Card card = ASK.card(question("snow-tool"), answers, false);
        assertEquals(1, card.done());
        assertEquals(SHOWROOM.questionnaire().applying(answers).size() - 1, card.left());
        assertTrue(card.progress().contains(Integer.toString(card.left())), card.progress());
    }

    @Test
    void answersOfEveryKindCanBeSaid() {
        AnswerWords words = words(false);
        Map<String, Answer> all = Map.of("jobs", Answer.Chosen.of("clear-snow"), "cab", Answer.Chosen.of("heated"),
                "comfort", new Answer.Chosen(List.of()), "steepest", new Answer.NotSure());
        assertEquals("Clear snow", words.answer(question("jobs"), all.get("jobs")));
        assertEquals("A closed cab with heat, for sure", words.answer(question("cab"), all.get("cab")));
        assertEquals("None of these", words.answer(question("comfort"), all.get("comfort")));
        assertEquals("Not sure", words.answer(question("steepest"), all.get("steepest")));
    }
}
