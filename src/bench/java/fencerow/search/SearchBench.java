package fencerow.search;

import fencerow.terms.Money;
import java.sql.SQLException;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Consumer;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * How long a keystroke takes to become a list of hits, and an index to be built: on what is shipped, and on a large
 * showroom; beside a full-text table of SQLite over the same words. A plain main method, for it measures tails.
 */
public final class SearchBench {
    private static final int UNITS = 20_000;
    private static final int EXPLAINERS = 5_000;
    private static final int ROUNDS = 3;
    /** Of the large showroom's keystrokes, one in so many is measured, after one round to warm up. */
    private static final int LARGE_STEP = 3;
    private static final long SEED = 1;

    private SearchBench() {}

    /** Measures and prints; an argument is a pattern for what to measure, {@code shipped} or {@code large}. */
    public static void main(String[] args) throws SQLException {
        List<Judged> judged = Shelf.judged();
        List<Entry> few = Shelf.entries();
        String which = args.length == 0 ? ".*" : args[0];
        if ("shipped".matches(which)) {
            compare("shipped, " + few.size() + " entries", few, Shelf.synonyms(), judged, ROUNDS, 1);
        }
        if ("large".matches(which)) {
            List<Entry> large = large(few, new Random(SEED));
            compare("large, " + large.size() + " entries", large, Shelf.synonyms(), judged, 1, LARGE_STEP);
        }
    }

    private static void compare(
            String what, List<Entry> entries, List<Synonym> synonyms, List<Judged> judged, int rounds, int step)
            throws SQLException {
        for (int i = 0; i < rounds; i++) {
            Finder.of(entries, synonyms, Map.of());
        }
        long start = System.nanoTime();
        Finder finder = Finder.of(entries, synonyms, Map.of());
        say("%s: index built warm in %.0f ms", what, (System.nanoTime() - start) / 1e6);
        try (FullTextTable table = FullTextTable.of(entries)) {
            List<Query> all = judged.stream().flatMap(SearchBench::keystrokes).toList();
            List<Query> keystrokes = IntStream.range(0, all.size())
                    .filter(i -> i % step == 0)
                    .mapToObj(all::get)
                    .toList();
            double[] ours = measure(keystrokes, finder::find, rounds);
            double[] theirs = measure(keystrokes, table::find, rounds);
            say("  keystroke to hits, ms:      p50 %6.2f  p99 %6.2f  longest %6.2f", at(ours, 0.5), at(ours, 0.99),
                    at(ours, 1));
            say("  the same, full-text table:  p50 %6.2f  p99 %6.2f  longest %6.2f", at(theirs, 0.5), at(theirs, 0.99),
                    at(theirs, 1));
            say("  ratio of medians, table to finder: %.2f", at(theirs, 0.5) / at(ours, 0.5));
            say("  quality, finder: %s", Quality.of(finder, judged));
            say("  quality, table:  %s", table.quality(judged));
        }
    }

    /** A query as it is typed, letter by letter. */
    private static Stream<Query> keystrokes(Judged judged) {
        List<Query> all = new ArrayList<>();
        for (int i = 1; i <= judged.text().length(); i++) {
            all.add(Query.of(judged.text().substring(0, i), judged.language()));
        }
        return all.stream();
    }

    private static double[] measure(List<Query> queries, Consumer<Query> find, int rounds) {
        for (int i = 0; i < rounds; i++) {
            queries.forEach(find);
        }
        double[] millis = new double[queries.size()];
        for (int i = 0; i < millis.length; i++) {
            long before = System.nanoTime();
            find.accept(queries.get(i));
            millis[i] = (System.nanoTime() - before) / 1e6;
        }
        Arrays.sort(millis);
        return millis;
    }

    private static double at(double[] sorted, double share) {
        return sorted[(int) Math.min(sorted.length - 1L, Math.round(share * sorted.length))];
    }

    /** The shipped entries again and again under other names, with their words shuffled, until there are enough. */
    private static List<Entry> large(List<Entry> shipped, Random random) {
        List<Entry> units = shipped.stream().filter(each -> each.kind() == Kind.UNIT).toList();
        List<Entry> explainers = shipped.stream().filter(each -> each.kind() == Kind.EXPLAINER).toList();
        List<Entry> all = new ArrayList<>(shipped);
        for (int i = 0; i < UNITS; i++) {
            Entry unit = units.get(i % units.size());
            all.add(again(unit, i, unit.passages(), unit.price().map(price ->
                    new Money(price.cents() + 100L * random.nextInt(5_000))), random));
        }
        for (int i = 0; i < EXPLAINERS; i++) {
            Entry explainer = explainers.get(i % explainers.size());
            List<Passage> passages = explainer.passages().stream()
                    .map(passage -> new Passage(passage.heading(), shuffled(passage.words(), random)))
                    .toList();
            all.add(again(explainer, i, passages, explainer.price(), random));
        }
        return all;
    }

    private static Entry again(
            Entry entry, int number, List<Passage> passages, Optional<Money> price, Random random) {
        return new Entry(entry.kind(), entry.id() + "-" + number, entry.language(),
                entry.title() + " " + (char) ('a' + random.nextInt(26)) + number, entry.names(), entry.related(),
                passages, entry.tags(), price, entry.boost());
    }

    private static String shuffled(String words, Random random) {
        List<String> all = new ArrayList<>(List.of(words.split(" ")));
        Collections.shuffle(all, random);
        return String.join(" ", all);
    }

    private static void say(String pattern, Object... values) {
        System.out.println(String.format(Locale.ROOT, pattern, values));
    }
}
