package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;

class SimulationTest {
    private static final Lot LOT = new Yard()
            .feature("factory-cab")
            .feature("lights")
            .matcher()
            .lot(List.of(Yard.unit().make("a-open"), Yard.unit().fitted("factory-cab").make("b-cab")));

    private static Question ask(String id, Option... options) {
        return new Question(new QuestionId(id), Choose.ONE, Map.of(), List.of(options), Optional.empty(), List.of());
    }

    private static Option idle(String id) {
        return new Option(new OptionId(id), 5, List.of(), List.of(), List.of());
    }

    private static Option must(String id, String of) {
        var rule = new Rule(new CapabilityId(of), Relation.AT_LEAST, new Rule.Level.Fixed(Amount.count(1)),
                Demand.ANY_STATE, true, 1);
        return new Option(new OptionId(id), 5, List.of(rule), List.of(), List.of());
    }

    private static List<Simulation.Shopper> shoppers(double agreement, Question... questions) {
        var next = new NextQuestion(new Questionnaire(List.of(questions), List.of()), 64, agreement, 1);
        return new Simulation(next).of(LOT, 40, 7);
    }

    @Test
    void onlyTheQuestionThatDecidesIsAskedAndTheFirstUnitIsThatOfAllAnswers() {
        List<Simulation.Shopper> shoppers = shoppers(
                0.95, ask("color", idle("red"), idle("gray")), ask("cab", idle("none"), must("must", "factory-cab")));

        assertEquals(40, shoppers.size());
        shoppers.forEach(shopper -> assertEquals(new Simulation.Shopper(1, 2, true), shopper));
    }

    @Test
    void whereGuessesAreBelievedTooSoonTheFirstUnitIsNotAlwaysThatOfAllAnswers() {
        List<Simulation.Shopper> shoppers = shoppers(0.3, ask("cab", idle("none"), must("must", "factory-cab")));

        assertTrue(shoppers.stream().allMatch(shopper -> shopper.asked() == 0));
        long same = shoppers.stream().filter(Simulation.Shopper::sameFirst).count();
        assertTrue(same > 0 && same < shoppers.size(), same + " of " + shoppers.size());
    }
}
