package fencerow.match;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import fencerow.needs.Answer;
import fencerow.needs.Answers;
import fencerow.needs.Question;
import fencerow.needs.Question.Choose;
import fencerow.needs.Question.Option;
import fencerow.needs.Questionnaire;
import fencerow.needs.Rule;
import fencerow.stock.Unit;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.Relation;
import fencerow.terms.UnitId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

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

    @Test
    void kioskAsksWhatDecidesTheOrderToo() {
        assertEquals(
                Optional.of(new QuestionId("cab")),
                NextQuestion.usual(NEXT.questionnaire()).after(Answers.NONE, LOT).map(Question::id));
    }

    @Test
    void nobodyWaitingIsAskedNothing() {
        assertEquals(Optional.empty(), NEXT.after(Answers.NONE, LOT, () -> true));
    }

    /** Of four guesses at two units at least two agree; where no more than two do, they are not six in ten. */
    @Test
    void agreementThatIsJustReachedIsEnough() {
        Questionnaire questionnaire = new Questionnaire(
                List.of(NEXT.questionnaire().questions().get(0), NEXT.questionnaire().questions().get(2)), List.of());
        int asked = 0;
        for (Answers answers : idleAnswers()) {
            assertEquals(
                    Optional.empty(),
                    new NextQuestion(questionnaire, 4, 0.5, 1).after(answers, LOT),
                    answers.toString());
            asked += new NextQuestion(questionnaire, 4, 0.6, 1).after(answers, LOT).isPresent() ? 1 : 0;
        }
        assertTrue(asked > 5, asked + " of 40 starts are asked anything; the test looks at nothing");
    }

    /** Answers to a question that asks nothing: the same shopper, and other guesses. */
    private static List<Answers> idleAnswers() {
        return IntStream.range(0, 40)
                .mapToObj(n -> Answers.NONE.with(new QuestionId("visit"), Answer.Chosen.of("number-" + n)))
                .toList();
    }

    /**
     * Three questions decide a little each: asked for nothing, one shopper in eight, another unit comes first. That
     * is 0.14 bits each (entropy of 1/8, 0.544, less half that of 1/4, 0.406); the idle question tells nothing, though
     * by chance its 24 answers seem to tell more.
     */
    @Test
    void questionThatTellsALittleComesBeforeOneWithManyAnswersThatTellsNothing() {
        var matcher = new Yard().feature("canopy").feature("lights").feature("seat").matcher();
        Lot lot = matcher.lot(List.of(
                Yard.unit().make("a-bare"),
                Yard.unit().fitted("canopy").fitted("lights").fitted("seat").make("b-full")));
        Option[] towns = IntStream.range(0, 24).mapToObj(n -> option("town-" + n)).toArray(Option[]::new);
        Question town = new Question(
                new QuestionId("town"), Choose.ONE, Map.of(), List.of(towns), Optional.empty(), List.of());
        var next = new NextQuestion(
                new Questionnaire(
                        List.of(town,
                                ask("shade", option("no"), option("yes", "canopy")),
                                ask("night", option("no"), option("yes", "lights")),
                                ask("back", option("no"), option("yes", "seat"))),
                        List.of()),
                160,
                0.999,
                1);
        long useful = idleAnswers().stream()
                .map(answers -> next.after(answers, lot))
                .filter(question -> question.isPresent() && !question.get().equals(town))
                .count();

        assertTrue(useful >= 38, useful + " of 40 times a question that tells something");
    }

    /** Whether a cab is wanted is asked only of those who work in winter; everybody says that they do. */
    @Test
    void questionThatEverybodyAnswersAlikeIsNotAskedThoughTheFirstUnitsDiffer() {
        var winter = new QuestionId("winter");
        Question cab = NEXT.questionnaire().questions().get(2);
        Question cabInWinter = new Question(cab.id(), Choose.ONE, Map.of(winter, List.of(new OptionId("yes"))),
                cab.options(), Optional.empty(), List.of());
        var next = new NextQuestion(
                new Questionnaire(List.of(ask("winter", option("yes")), cabInWinter), List.of()), 64, 0.95, 1);

        assertEquals(Optional.empty(), next.after(Answers.NONE, LOT));
        assertEquals(
                Optional.of(cabInWinter), next.after(Answers.NONE.with(winter, Answer.Chosen.of("yes")), LOT));
    }

    static LongStream seeds() {
        return LongStream.rangeClosed(1, 12);
    }

    /** What a question tells by all answers and how many shoppers give them, worked out in full instead of guessed. */
    @ParameterizedTest
    @MethodSource("seeds")
    void questionThatTellsMostByFarIsAsked(long seed) {
        var random = new Random(seed);
        Lot lot = someLot(random);
        List<Question> questions =
                IntStream.range(0, 3).mapToObj(q -> someQuestion("question-" + q, random)).toList();
        var next = new NextQuestion(new Questionnaire(questions, List.of()), 500, 1, 1);
        List<Whole> shoppers = List.of(new Whole(Answers.NONE, 1));
        for (Question question : questions) {
            shoppers = shoppers.stream().flatMap(shopper -> shopper.answering(question)).toList();
        }
        Map<Whole, UnitId> first = new LinkedHashMap<>();
        shoppers.forEach(shopper -> first.put(shopper,
                Ranking.of(lot, next.questionnaire().needs(shopper.answers())).first(1).get(0)));
        List<Double> bits = questions.stream().map(question -> bits(first, question)).toList();
        List<Double> falling = bits.stream().sorted(Comparator.reverseOrder()).toList();

        Optional<Question> asked = next.after(Answers.NONE, lot);

        if (falling.get(0) > falling.get(1) + 0.1) {
            assertEquals(Optional.of(questions.get(bits.indexOf(falling.get(0)))), asked, "seed " + seed + " " + bits);
        } else if (falling.get(0) == 0) {
            assertEquals(Optional.empty(), asked, "seed " + seed);
        }
    }

    /** Shoppers who answer alike, with their share of all. */
    private record Whole(Answers answers, double share) {
        Stream<Whole> answering(Question question) {
            double all = question.options().stream().mapToInt(Option::share).sum();
            return question.options().stream().map(option -> new Whole(
                    answers.with(question.id(), Answer.Chosen.of(option.id().value())),
                    share * option.share() / all));
        }
    }

    /** Mutual information of answer and first unit: the sum of p(a, u) log2 [p(a, u) / (p(a) p(u))]. */
    private static double bits(Map<Whole, UnitId> first, Question question) {
        Map<UnitId, Double> units = new HashMap<>();
        Map<Answer, Double> answers = new HashMap<>();
        Map<List<Object>, Double> both = new HashMap<>();
        first.forEach((shopper, unit) -> {
            Answer answer = shopper.answers().find(question.id()).orElseThrow();
            units.merge(unit, shopper.share(), Double::sum);
            answers.merge(answer, shopper.share(), Double::sum);
            both.merge(List.of(answer, unit), shopper.share(), Double::sum);
        });
        return both.entrySet().stream()
                .mapToDouble(each -> each.getValue() * Math.log(each.getValue()
                        / (answers.get(each.getKey().get(0)) * units.get(each.getKey().get(1)))) / Math.log(2))
                .sum();
    }

    private static Lot someLot(Random random) {
        var yard = new Yard();
        IntStream.range(0, 5).forEach(f -> yard.feature("feature-" + f));
        List<Unit> units = new ArrayList<>();
        for (int u = 0; u < 5; u++) {
            Yard.UnitMaker unit = Yard.unit().asking(10000 + 1000 * random.nextInt(10));
            IntStream.range(0, 5).filter(f -> random.nextBoolean()).forEach(f -> unit.fitted("feature-" + f));
            units.add(unit.make("unit-" + u));
        }
        return yard.matcher().lot(units);
    }

    private static Question someQuestion(String id, Random random) {
        List<Option> options = new ArrayList<>();
        for (int o = 2 + random.nextInt(3); o > 0; o--) {
            Option option = random.nextInt(3) == 0
                    ? option(id + "-" + o)
                    : option(id + "-" + o, "feature-" + random.nextInt(5));
            options.add(new Option(option.id(), 1 + random.nextInt(9), option.rules(), List.of(), List.of()));
        }
        return new Question(new QuestionId(id), Choose.ONE, Map.of(), options, Optional.empty(), List.of());
    }

    @Test
    void questionThatNoTwoGuessesAnswerAlikeTellsNothing() {
        Option[] idle = IntStream.range(0, 16).mapToObj(n -> option("hobby-" + n)).toArray(Option[]::new);
        var next = new NextQuestion(
                new Questionnaire(List.of(ask("hobbies", idle), NEXT.questionnaire().questions().get(2)), List.of()),
                64,
                0.95,
                1);

        assertEquals(Optional.of(new QuestionId("cab")), next.after(Answers.NONE, LOT).map(Question::id));
    }
}
