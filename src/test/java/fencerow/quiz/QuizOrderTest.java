package fencerow.quiz;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.terms.AtStake;
import fencerow.terms.Money;
import fencerow.terms.OptionId;
import fencerow.terms.PriceRange;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

/** In which order the quiz asks. */
class QuizOrderTest {
    private static final Quiz QUIZ = new Quiz(
            Stream.of("a", "b", "c", "d", "e", "f").map(QuizOrderTest::question).toList());

    private static QuizQuestion question(String id) {
        return new QuizQuestion(new QuestionId(id), QuizQuestion.Kind.BELIEF, Optional.empty(), new TopicId("topic"),
                QuizQuestion.BELIEF_SCALE, QuizQuestion.BELIEF_SCALE.get(1), 0.5);
    }

    private static Quiz.Worth dollars(long dollars, boolean job) {
        Money money = Money.ofDollars(dollars);
        return new Quiz.Worth(new AtStake(new PriceRange(money, money), job), 1);
    }

    private static String order(Function<QuizQuestion, Quiz.Worth> worth, long seed) {
        List<String> asked = new ArrayList<>();
        Beliefs beliefs = Beliefs.NONE;
        for (int i = 0; i < QUIZ.questions().size(); i++) {
            QuestionId next = QUIZ.next(beliefs, worth, seed).orElseThrow().id();
            asked.add(next.value());
            beliefs = beliefs.with(next, Belief.of(new OptionId("comes-with-it")));
        }
        return String.join("", asked);
    }

    @Test
    void whereAsMuchIsAtStakeEachVisitHasItsOwnOrderAndKeepsIt() {
        Set<String> orders = new HashSet<>();
        for (long seed = 0; seed < 100; seed++) {
            String order = order(question -> dollars(400, false), seed);
            assertEquals(order, order(question -> dollars(400, false), seed), "seed " + seed);
            orders.add(order);
        }
        assertTrue(orders.size() > 50, () -> "orders in 100 visits: " + orders);
    }

    @Test
    void whatIsAtStakeComesBeforeAnySeed() {
        Map<String, Quiz.Worth> worths = Map.of("a", dollars(100, false), "b", dollars(600, false),
                "c", dollars(300, false), "d", dollars(0, true), "e", dollars(500, false), "f", dollars(200, false));
        for (long seed = 0; seed < 100; seed++) {
            assertEquals("dbecfa", order(question -> worths.get(question.id().value()), seed), "seed " + seed);
        }
    }
}
