package fencerow.search;

import fencerow.terms.TopicId;
import java.util.BitSet;
import java.util.Collection;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Finds entries by shoppers' words. An immutable snapshot, safe for use by any number of threads; when content or
 * stock change, build another one in the background and put it in place of this one.
 */
public final class Finder {
    /** Hits below this part of the best one's score are noise. */
    private static final double NOISE = 0.05;
    /** What a unit scores that fits, or may fit, what is asked of the stock, in best word matches. */
    private static final double FITS = 1.5;
    private static final double MAY_FIT = 0.8;
    private static final int MOST_COMPLETIONS = 6;
    private static final int NEAREST = 5;
    private static final Set<Kind> COMPLETED = Set.of(Kind.EXPLAINER, Kind.WORD, Kind.JOB, Kind.ATTACHMENT);

    private final List<Entry> entries;
    private final Index index;
    private final Reader reader;
    private final Clauses clauses;
    private final IntentReader intents;
    private final Spelling spelling;
    private final Excerpts excerpts;
    private final Sieve sieve;
    /** Titles that complete what is typed, read once, by place. */
    private final Map<Integer, String> completed = new HashMap<>();

    private Finder(List<Entry> entries, Collection<Synonym> synonyms) {
        this.entries = entries;
        index = Index.of(entries);
        reader = new Reader(index.languages());
        clauses = new Clauses(index, new Concepts(synonyms, reader));
        intents = new IntentReader(entries, reader);
        spelling = new Spelling(index);
        excerpts = new Excerpts(entries);
        sieve = new Sieve(entries);
        for (int place = 0; place < entries.size(); place++) {
            if (COMPLETED.contains(entries.get(place).kind())) {
                completed.put(place, reader.read(entries.get(place).title()).folded());
            }
        }
    }

    /**
     * Builds a finder in memory; takes a while, so do it in the background.
     *
     * @param entries  what can be found
     * @param synonyms words that stand for each other
     * @param aliases  the showroom's own words for topics; they lead to the topics' explainers and are never shown
     */
    public static Finder of(
            Collection<Entry> entries, Collection<Synonym> synonyms, Map<String, TopicId> aliases) {
        Map<String, List<String>> byTopic = aliases.entrySet().stream().collect(Collectors.groupingBy(
                alias -> alias.getValue().value(), Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
        List<Entry> named = entries.stream()
                .map(entry -> entry.kind() == Kind.EXPLAINER && byTopic.containsKey(entry.id())
                        ? entry.withNames(Stream.concat(
                                entry.names().stream(),
                                byTopic.getOrDefault(entry.id(), List.of()).stream().sorted()).toList())
                        : entry)
                .toList();
        return new Finder(named, synonyms);
    }

    /** How many entries there are. */
    public int size() {
        return entries.size();
    }

    /** Finds what the query asks for. */
    public Results find(Query query) {
        String text = query.text().substring(0, Math.min(query.text().length(), Query.LONGEST));
        IntentReader.Understood understood = intents.read(text);
        Reading reading = reader.read(understood.words());
        Optional<Spelling.Right> right = spelling.putRight(understood.words(), reading, query.language());
        Optional<Reading> putRight = right.map(each -> reader.read(each.text()));
        var ranking = new Ranking(
                entries, sieve, query, sieve.in(query.language()), scores(query, understood, reading, putRight));
        Excerpts.Marks marks = clauses.marks(reading, putRight);
        List<Hit> hits = hits(ranking.first(query.limit()), marks);
        return new Results(
                hits,
                ranking.groups(),
                ranking.facets(),
                completions(query, reading),
                right.filter(Spelling.Right::shown).map(Spelling.Right::text),
                understood.intent(),
                hits.isEmpty() ? hits(nearest(query, reading), marks) : List.of());
    }

    /** What each entry that may be found scores; 0 where it does not match, or next to nothing. */
    private float[] scores(
            Query query, IntentReader.Understood understood, Reading reading, Optional<Reading> putRight) {
        float[] scores = reading.words().isEmpty()
                ? new float[entries.size()]
                : index.scores(clauses.of(reading, putRight, query.language()));
        sieve.weigh(scores, query.favoured());
        BitSet seen = sieve.in(query.language());
        double best = seen.stream().mapToDouble(place -> scores[place]).max().orElse(0);
        if (!understood.intent().isNone()) {
            boolean otherWords = !reader.read(understood.rest()).words().isEmpty();
            sieve.of(Kind.UNIT).stream().forEach(unit -> scores[unit] =
                    (float) ofUnit(unit, otherWords ? scores[unit] : 0, understood.intent(), best > 0 ? best : 1));
        }
        for (int place = 0; place < scores.length; place++) {
            if (scores[place] < NOISE * best) {
                scores[place] = 0;
            }
        }
        return scores;
    }

    /** Units that fit come first; among them words beyond equipment and price decide, then the price. */
    private double ofUnit(int place, double words, Intent intent, double best) {
        return switch (sieve.fit(intent, place)) {
            case FITS -> FITS * best + words;
            case MAY_FIT -> MAY_FIT * best + words;
            case FITS_NOT -> 0;
        };
    }

    private List<Hit> hits(List<Ranking.Ranked> ranked, Excerpts.Marks marks) {
        return ranked.stream()
                .map(each -> {
                    Entry entry = entries.get(each.place());
                    Excerpts.Shown shown = excerpts.of(each.place(), entry, marks);
                    return new Hit(entry.kind(), entry.id(), shown.title(), shown.section(), shown.excerpt(),
                            each.score());
                })
                .toList();
    }

    /** A title, as it is read, that the words typed may be the beginning of. */
    private record Completion(String words, String folded, double weight) {}

    private List<String> completions(Query query, Reading reading) {
        if (reading.words().isEmpty()) {
            return List.of();
        }
        float[] begun = index.scores(clauses.beginnings(reading));
        sieve.weigh(begun, query.favoured());
        String typed = reading.folded();
        var ranking = new Ranking(entries, sieve, query, completable(query.language()), begun);
        return ranking.stream()
                .map(each -> new Completion(
                        entries.get(each.place()).title(),
                        completed.getOrDefault(each.place(), ""),
                        each.score()))
                .filter(each -> !each.folded().equals(typed))
                .sorted(Comparator.comparing((Completion each) -> !each.folded().startsWith(typed))
                        .thenComparing(Comparator.comparingDouble(Completion::weight).reversed())
                        .thenComparing(each -> each.words().length())
                        .thenComparing(Completion::words))
                .map(Completion::words)
                .distinct()
                .limit(MOST_COMPLETIONS)
                .toList();
    }

    private BitSet completable(String language) {
        BitSet places = Sieve.anyOf(COMPLETED, sieve::of);
        places.and(sieve.in(language));
        return places;
    }

    private List<Ranking.Ranked> nearest(Query query, Reading reading) {
        float[] scores = index.scores(clauses.nearest(reading));
        sieve.weigh(scores, query.favoured());
        Query topics = query.withKinds(Set.of(Kind.EXPLAINER)).withOnly(Set.of());
        return new Ranking(entries, sieve, topics, sieve.in(query.language()), scores).first(NEAREST);
    }

    @Override
    public String toString() {
        return "Finder over " + size() + " entries";
    }
}
