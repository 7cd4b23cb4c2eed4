package fencerow.match;

import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.needs.Answers;
import fencerow.needs.Completion;
import fencerow.needs.Needs;
import fencerow.needs.Question;
import fencerow.needs.Requirement;
import fencerow.stock.AskingPrice;
import fencerow.stock.Catalogue;
import fencerow.stock.Unit;
import fencerow.terms.Fact;
import fencerow.terms.Feature;
import fencerow.terms.FeatureId;
import fencerow.terms.Money;
import fencerow.terms.Offering;
import fencerow.terms.UnitId;
import fencerow.visit.Showroom;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.Set;

/**
 * How long matching takes on units and shoppers like the demo's, generated to size: one thread, medians of many runs
 * after warming up. Prints a table.
 */
public final class MatchBench {
    private static final int MUSTS = 12;
    private static final int WISHES = 8;
    private static final int RUNS = 41;

    private final Showroom showroom;
    private final Random random = new Random(20260101);

    private MatchBench(Showroom showroom) {
        this.showroom = showroom;
    }

    /** Runs the bench on the shipped content. */
    public static void main(String[] arguments) {
        Reading<Content> read =
                new ContentReader().read(Path.of("content"), Path.of("kiosk-config"), Optional.empty());
        if (read instanceof Reading.Good<Content> good) {
            new MatchBench(good.content().showroom()).run();
        } else {
            throw new IllegalStateException("the shipped content has problems; run check");
        }
    }

    private void run() {
        var matcher = new Matcher(showroom.catalogue());
        List<Unit> thousand = units(1000);
        System.out.printf(Locale.ROOT, "%-44s %8s %9s %9s%n", "what", "feasible", "median ms", "p95 ms");
        for (double share : new double[] {0.1, 0.5}) {
            Needs needs = needsWithFeasible(matcher, units(200), share);
            time("rank 1,000 units", matcher, thousand, needs);
            time("rank 10,000 units", matcher, units(10_000), needs);
            changes("what would change, 1,000 units", matcher, thousand, needs);
        }
        Needs one = needsWithFeasible(matcher, units(200), 0.3);
        time("rank the demo's own units", matcher, showroom.units(), one);
        nextQuestion(matcher);
    }

    private void time(String what, Matcher matcher, List<Unit> units, Needs needs) {
        double[] millis = new double[RUNS];
        Ranking last = Ranking.of(matcher, units, needs);
        for (int run = -RUNS / 2; run < RUNS; run++) {
            long start = System.nanoTime();
            last = Ranking.of(matcher, units, needs);
            if (run >= 0) {
                millis[run] = (System.nanoTime() - start) / 1e6;
            }
        }
        print(what, (double) last.ready().size() / units.size(), millis);
    }

    private void changes(String what, Matcher matcher, List<Unit> units, Needs needs) {
        double[] millis = new double[RUNS];
        for (int run = -RUNS / 2; run < RUNS; run++) {
            Ranking ranking = Ranking.of(matcher, units, needs);
            long start = System.nanoTime();
            int found = ranking.changes().size();
            if (run >= 0 && found >= 0) {
                millis[run] = (System.nanoTime() - start) / 1e6;
            }
        }
        print(what, Double.NaN, millis);
    }

    private void nextQuestion(Matcher matcher) {
        var next = new NextQuestion(showroom.questionnaire(), 64, 0.95, 3);
        List<Unit> units = units(200);
        double[] millis = new double[9];
        for (int run = -3; run < millis.length; run++) {
            long start = System.nanoTime();
            Optional<Question> question = next.after(Answers.NONE, matcher, units);
            if (run >= 0 && question.isPresent()) {
                millis[run] = (System.nanoTime() - start) / 1e6;
            }
        }
        print("next question, 200 units, 64 draws", Double.NaN, millis);
    }

    private static void print(String what, double feasible, double[] millis) {
        Arrays.sort(millis);
        System.out.printf(
                Locale.ROOT,
                "%-44s %7.0f%% %9.2f %9.2f%n",
                what,
                feasible * 100,
                millis[millis.length / 2],
                millis[(int) (millis.length * 0.95)]);
    }

    /** Of many random shoppers with enough must-haves, the one for whom nearest to the share of units is feasible. */
    private Needs needsWithFeasible(Matcher matcher, List<Unit> units, double share) {
        Needs best = Needs.NONE;
        double nearest = Double.POSITIVE_INFINITY;
        for (int i = 0; i < 400; i++) {
            Needs needs = someNeeds();
            if (needs.musts().size() >= MUSTS) {
                double feasible = (double) Ranking.of(matcher, units, needs).ready().size() / units.size();
                if (Math.abs(feasible - share) < nearest) {
                    nearest = Math.abs(feasible - share);
                    best = needs;
                }
            }
        }
        return best;
    }

    /** The needs of several random shoppers put together, cut to size. */
    private Needs someNeeds() {
        List<Requirement> musts = new ArrayList<>();
        List<Requirement> wishes = new ArrayList<>();
        while (musts.size() < MUSTS) {
            Answers answers = new Completion(showroom.questionnaire(), random).complete(Answers.NONE);
            for (Requirement each : showroom.questionnaire().needs(answers).requirements()) {
                List<Requirement> to = each.must() ? musts : wishes;
                if (to.size() < (each.must() ? MUSTS : WISHES)
                        && to.stream().noneMatch(other -> other.demand().of().equals(each.demand().of()))) {
                    to.add(each);
                }
            }
        }
        musts.addAll(wishes);
        return new Needs(
                musts, Set.of(), Set.of(), Optional.empty(), OptionalDouble.empty());
    }

    private List<Unit> units(int count) {
        List<Unit> units = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            Unit like = showroom.units().get(random.nextInt(showroom.units().size()));
            units.add(varied(like, i));
        }
        return units;
    }

    private Unit varied(Unit like, int number) {
        Catalogue catalogue = showroom.catalogue();
        Map<FeatureId, Fact> facts = new HashMap<>(like.facts());
        for (Feature feature : catalogue.features()) {
            Offering offering = like.model().offeringOf(feature);
            if ((offering == Offering.EXTRA || offering == Offering.COMMON) && feature.kinds().isEmpty()) {
                int drawn = random.nextInt(20);
                if (drawn < 3) {
                    facts.put(feature.id(), drawn == 0
                            ? new Fact.Unverified(List.of(Fact.absent(), Fact.fitted()))
                            : Fact.fitted());
                }
            }
        }
        Money asking = like.price().asking().plus(Money.ofDollars((long) random.nextInt(4000)));
        var price = new AskingPrice(
                asking, Optional.empty(), like.price().freight(), like.price().setup(), like.price().fees());
        return new Unit(
                new UnitId("g-" + number),
                like.model(),
                like.condition(),
                like.year(),
                like.hours(),
                like.availability(),
                like.leadDays(),
                price,
                facts,
                like.bundled(),
                like.catchUp());
    }
}
