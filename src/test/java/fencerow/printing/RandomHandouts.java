package fencerow.printing;

import fencerow.checklist.AddCost;
import fencerow.checklist.Because;
import fencerow.checklist.ChecklistLine;
import fencerow.checklist.LineTemplate.Audience;
import fencerow.checklist.LineTemplate;
import fencerow.explainers.Library;
import fencerow.needs.Requirement;
import fencerow.quiz.QuizQuestion;
import fencerow.terms.Amount;
import fencerow.terms.AtStake;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.FeatureId;
import fencerow.terms.Money;
import fencerow.terms.OptionId;
import fencerow.terms.Payment;
import fencerow.terms.PriceRange;
import fencerow.terms.QuestionId;
import fencerow.terms.Relation;
import fencerow.terms.Stop;
import fencerow.terms.Threshold;
import fencerow.terms.TopicId;
import fencerow.visit.ReturnCode;
import fencerow.wording.Phrases;
import fencerow.wording.Texts;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.Random;

/** Handouts with the shipped lines and words, and whatever else a visit may come to drawn from a seed. */
final class RandomHandouts {
    static final LocalDate DAY = LocalDate.of(2026, 11, 25);

    private static final List<String> WORK = List.of(
            "clear snow", "keep the drive smooth", "mow the lawn", "move logs", "move pallets", "till a garden");
    private static final List<String> MUSTS = List.of(
            "clear snow", "keep the drive smooth", "Lift at full height: at least 900 lb", "a mid PTO",
            "Height with roll bar folded: at most 82 in", "a closed cab", "mow the lawn",
            "Mowing width: enough to mow 3 ac in 2 h", "no loader left on", "Rear remotes: at least 2");
    private static final List<String> CAUTIONS = List.of("snow-blower", "loader", "slopes", "mower", "pto", "hitch");

    private static final List<LineTemplate> TEMPLATES = Shipped.CONTENT.showroom().composer().templates();

    private final Random random;
    private final Texts texts;

    RandomHandouts(long seed, Texts texts) {
        this.random = new Random(seed);
        this.texts = texts;
    }

    Phrases phrases() {
        return new Phrases(texts, Amount::toString);
    }

    /** One visit's pages. */
    Handout next() {
        List<Handout.MustHave> mustHaves = some(MUSTS, random.nextInt(MUSTS.size() + 1)).stream()
                .map(words -> new Handout.MustHave(words, cost()))
                .toList();
        List<Handout.Tractor> tractors = new ArrayList<>();
        int pinned = random.nextInt(4);
        for (int i = 0; i < pinned; i++) {
            tractors.add(tractor(mustHaves.size()));
        }
        return new Handout(
                new Handout.Imprint("Tumblegate Tractor Yard", true, DAY, "2026-11-20 3f9a2c1"),
                String.join(", ", some(WORK, random.nextInt(5))),
                mustHaves,
                lines(),
                some(CAUTIONS, random.nextInt(5)),
                tractors,
                new Library(texts.language(), List.of(), List.of()),
                random.nextInt(3) == 0
                        ? Optional.of(new ReturnCode("WWWW-WWWW-WWWW", DAY.plusDays(60)))
                        : Optional.empty());
    }

    /** Every line there is, for a page without end. */
    Handout withEveryLine() {
        Handout handout = next();
        List<ChecklistLine> lines = TEMPLATES.stream()
                .map(template -> new LineTemplate(template.id(), Stop.FRONT, template.feature(),
                        Audience.EVERYONE, AtStake.NOTHING, false, template.topic()))
                .map(template -> new ChecklistLine(template, AtStake.money(PriceRange.ofDollars(1200, 4800)), 1,
                        List.of(new Because.ForEveryone()), ChecklistLine.Place.PAGE_ONE))
                .toList();
        return new Handout(handout.imprint(), handout.work(), handout.mustHaves(), lines, handout.cautions(),
                handout.tractors(), handout.library(), handout.comeBack());
    }

    private <T> List<T> some(List<T> all, int count) {
        List<T> shuffled = new ArrayList<>(all);
        Collections.shuffle(shuffled, random);
        return shuffled.subList(0, count);
    }

    private AddCost cost() {
        return switch (random.nextInt(4)) {
            case 0 -> new AddCost.Nothing();
            case 1 -> new AddCost.Impossible();
            case 2 -> new AddCost.Unknown();
            default -> new AddCost.Costs(range());
        };
    }

    private PriceRange range() {
        long low = 50L * (1 + random.nextInt(60));
        return PriceRange.ofDollars(low, low + 50L * random.nextInt(80));
    }

    private Handout.Tractor tractor(int mustHaves) {
        List<AddCost> costs = new ArrayList<>();
        for (int i = 0; i < mustHaves; i++) {
            costs.add(cost());
        }
        Optional<PriceRange> toSpend = random.nextInt(4) == 0 ? Optional.empty() : Optional.of(range());
        Money asking = Money.ofDollars(9000L + 10L * random.nextInt(3000));
        Money extras = Money.ofDollars(1145);
        Money out = asking.plus(extras);
        Money trade = random.nextBoolean() ? Money.ZERO : Money.ofDollars(50L * random.nextInt(300));
        return new Handout.Tractor("Tumblegate Tractor Yard", "Bramblewick B 1823", "2019, 640 hours", asking, extras,
                out, costs, toSpend, trade,
                toSpend.map(PriceRange.exactly(out)::plus).map(Payment::of).map(ready -> ready.less(trade)),
                "Can't be made ready");
    }

    private List<ChecklistLine> lines() {
        boolean used = random.nextBoolean();
        double share = random.nextDouble();
        return TEMPLATES.stream()
                .filter(template -> switch (template.audience()) {
                    case EVERYONE -> true;
                    case USED -> used;
                    case NEW -> !used;
                    case FEATURE -> random.nextDouble() < share;
                })
                .map(this::line)
                .toList();
    }

    private ChecklistLine line(LineTemplate template) {
        AtStake atStake = template.feature().isPresent()
                ? new AtStake(range(), random.nextInt(8) == 0)
                : template.atStake();
        List<Because> because = template.feature().map(this::because).orElse(List.of(new Because.ForEveryone()));
        double expected = atStake.money().middle().toDollars() * random.nextDouble();
        return new ChecklistLine(template, atStake, expected, because, ChecklistLine.Place.FURTHER_SHEET);
    }

    private List<Because> because(FeatureId feature) {
        List<Because> because = new ArrayList<>();
        QuizQuestion question = new QuizQuestion(new QuestionId(feature.value()), QuizQuestion.Kind.BELIEF,
                Optional.of(feature), new TopicId(feature.value()), QuizQuestion.BELIEF_SCALE,
                new OptionId("can-be-added"), 0.5);
        switch (random.nextInt(3)) {
            case 0 -> because.add(
                    new Because.WrongBelief(question, new OptionId("comes-with-it"), random.nextBoolean()));
            case 1 -> because.add(new Because.Unsure(question));
            default -> {
                // no belief told
            }
        }
        if (because.isEmpty() || random.nextBoolean()) {
            because.add(new Because.YourWork(new Requirement("jobs/" + feature,
                    new Demand(CapabilityId.of(feature), Relation.AT_LEAST, Threshold.of(Amount.count(1)),
                            Demand.ANY_STATE),
                    true, 1, new fencerow.needs.Because(
                            new QuestionId("jobs"), Optional.empty(), Optional.empty()))));
        }
        return because;
    }
}
