package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.needs.Question.Choose;
import fencerow.needs.Question.Option;
import fencerow.needs.Questionnaire;
import fencerow.needs.Rule;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.Relation;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class NextQuestionTest {
    private static final NextQuestion NEXT = new NextQuestion(
            new Questionnaire(
                    List.of(
                            ask("color", option("red"), option("gray")),
                            ask("hobbies", manyIdle()),
                            ask("cab", option("none"), option("must", "factory-cab"))),
                    List.of()),
            64,
            0.95,
            1);

    private static final Matcher MATCHER = new Yard().feature("factory-cab").feature("lights").matcher();
    private static final Lot LOT = MATCHER.lot(List.of(
            Yard.unit().make("a-open"), Yard.unit().fitted("factory-cab").make("b-cab")));

    private static Question ask(String id, Option... options) {
        Choose choose = options.length > 2 ? Choose.SEVERAL : Choose.ONE;
        return new Question(new QuestionId(id), choose, Map.of(), List.of(options), Optional.empty(), List.of());
    }

    private static Option option(String id, String... musts) {
        List<Rule> rules = new ArrayList<>();
        for (String must : musts) {
            rules.add(new Rule(
                    new CapabilityId(must),
                    Relation.AT_LEAST,
                    new Rule.Level.Fixed(Amount.count(1)),
                    Demand.ANY_STATE,
                    true,
                    1));
        }
        return new Option(new OptionId(id), 5, rules, List.of(), List.of());
    }

    /** Eight idle options: 256 answers, so that raw entropy would fall to nothing by chance alone. */
    private static Option[] manyIdle() {
        Option[] options = new Option[8];
        for (int i = 0; i < options.length; i++) {
            options[i] = option("hobby-" + i);
        }
        return options;
    }

    @Test
    void asksWhatDecidesTheOrderAndNotWhatHasManyAnswers() {
        assertEquals(
                Optional.of(new QuestionId("cab")),
                NEXT.after(Answers.NONE, LOT).map(Question::id));
    }

    @Test
    void stopsWhenNothingOpenCanChangeTheFirstUnits() {
        Answers answers = Answers.NONE.with(new QuestionId("cab"), Answer.Chosen.of("must"));

        assertEquals(Optional.empty(), NEXT.after(answers, LOT));
    }

    @Test
    void asksNothingOfAnEmptyYard() {
        assertEquals(Optional.empty(), NEXT.after(Answers.NONE, MATCHER.lot(List.of())));
    }
}
