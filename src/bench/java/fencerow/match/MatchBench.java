package fencerow.match;

import fencerow.content.Content;
import fencerow.content.ContentReader;
import fencerow.content.Reading;
import fencerow.needs.Answers;
import fencerow.needs.Needs;
import fencerow.visit.Showroom;
import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.function.UnaryOperator;
import java.util.stream.DoubleStream;

/**
 * How long matching takes on units and shoppers like the demo's, generated to size: one thread, medians of many runs
 * over several shoppers after warming up. Prints a table with the targets.
 */
public final class MatchBench {
    private static final long SEED = 20260101;
    private static final int SHOPPERS = 5;
    private static final int RUNS = 15;
    private static final int WARM_UP = 15;

    private final GeneratedStock stock;
    private final Showroom showroom;

    private MatchBench(Showroom showroom) {
        this.showroom = showroom;
        this.stock = new GeneratedStock(showroom, SEED);
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
        Lot few = matcher.lot(stock.units(200));
        Lot thousand = matcher.lot(stock.units(1000));
        Lot tenThousand = matcher.lot(stock.units(10_000));
        System.out.printf(Locale.ROOT, "%-46s %6s %9s %9s %9s%n", "what", "ready", "median ms", "p95 ms", "target ms");
        for (double share : new double[] {0.1, 0.5}) {
            List<Needs> shoppers = stock.shoppers(few, share, SHOPPERS);
            time("rank 1,000 units", 10, thousand, shoppers, needs -> () -> Ranking.of(thousand, needs));
            time("rank 10,000 units", 100, tenThousand, shoppers, needs -> () -> Ranking.of(tenThousand, needs));
            changed("one must-have added, 1,000 units", thousand, shoppers, stock::added);
            changed("one must-have dropped, 1,000 units", thousand, shoppers, stock::dropped);
            changed("one amount a tenth up, 1,000 units", thousand, shoppers, n -> stock.harder(n, 1.1));
            changed("one amount a tenth down, 1,000 units", thousand, shoppers, n -> stock.harder(n, 1 / 1.1));
            time("what would change, 1,000 units", 100, thousand, shoppers, needs -> {
                Ranking ranking = Ranking.of(thousand, needs);
                return () -> ranking.whatIf().changes();
            });
        }
        var next = NextQuestion.usual(showroom.questionnaire());
        double[] millis = new double[RUNS];
        for (int run = -3; run < RUNS; run++) {
            double taken = taken(() -> next.after(Answers.NONE, few));
            if (run >= 0) {
                millis[run] = taken;
            }
        }
        print("next question, 200 units, 64 guesses", Optional.empty(), millis, 300);
    }

    /** One answer changed: the ranking made from the one before it. */
    private void changed(String what, Lot lot, List<Needs> shoppers, UnaryOperator<Needs> change) {
        time(what, 4, lot, shoppers, needs -> {
            Ranking before = Ranking.of(lot, needs);
            Needs after = change.apply(needs);
            return () -> before.next(lot, after);
        });
    }

    /** Times work prepared afresh for each run, for each shopper. */
    private static void time(
            String what, double target, Lot lot, List<Needs> shoppers, Function<Needs, Supplier<Object>> prepare) {
        double[] millis = new double[RUNS * shoppers.size()];
        double ready = 0;
        for (int s = 0; s < shoppers.size(); s++) {
            Needs needs = shoppers.get(s);
            ready += Ranking.of(lot, needs).ready().size();
            for (int run = -WARM_UP; run < RUNS; run++) {
                double taken = taken(prepare.apply(needs));
                if (run >= 0) {
                    millis[s * RUNS + run] = taken;
                }
            }
        }
        print(what, Optional.of(ready / shoppers.size() / lot.units().size()), millis, target);
    }

    private static double taken(Supplier<Object> work) {
        long start = System.nanoTime();
        Object done = work.get();
        long end = System.nanoTime();
        if (done == null) {
            throw new IllegalStateException("the work gave nothing");
        }
        return (end - start) / 1e6;
    }

    private static void print(String what, Optional<Double> ready, double[] millis, double target) {
        double[] sorted = DoubleStream.of(millis).sorted().toArray();
        double median = sorted[sorted.length / 2];
        System.out.printf(
                Locale.ROOT,
                "%-46s %6s %9.2f %9.2f %9.0f %s%n",
                what,
                ready.map(share -> Math.round(share * 100) + " %").orElse(""),
                median,
                sorted[(int) (sorted.length * 0.95)],
                target,
                median <= target ? "met" : "missed");
    }
}
