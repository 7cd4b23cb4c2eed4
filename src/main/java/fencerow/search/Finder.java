package fencerow.search;

import fencerow.terms.FeatureId;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Collection;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;

/**
 * Finds entries by shoppers' words. An immutable snapshot, safe for use by any number of threads; when content or
 * stock change, build another one and put it in place of this one.
 */
public final class Finder {
    /** Hits below this part of the best one's score are noise. */
    private static final double NOISE = 0.05;
    /** What a unit that fits what was asked of the stock scores, in best word matches. */
    private static final double FITS = 1.5;
    private static final double MAY_FIT = 0.8;
    private static final int MOST_COMPLETIONS = 6;
    private static final int NEAREST = 5;
    private static final Set<Kind> COMPLETED = Set.of(Kind.EXPLAINER, Kind.WORD, Kind.JOB, Kind.ATTACHMENT);

    private final Index index;
    private final Reader reader;
    private final Clauses clauses;
    private final IntentReader intents;
    private final Spelling spelling;
    private final Excerpts excerpts;
    private final Set<String> entryLanguages;
    private final Set<String> translated;
    private final Map<Integer, String> completed = new HashMap<>();

    private Finder(List<Entry> entries, Collection<Synonym> synonyms) {
        index = Index.of(entries);
        reader = new Reader(index.languages());
        clauses = new Clauses(index, new Concepts(synonyms, reader));
        intents = new IntentReader(entries, reader);
        spelling = new Spelling(index, clauses);
        excerpts = new Excerpts(index);
        entryLanguages = entries.stream().map(Entry::language).collect(Collectors.toCollection(TreeSet::new));
        translated = entries.stream().map(Finder::inItsLanguage).collect(Collectors.toSet());
        for (int place = 0; place < entries.size(); place++) {
            if (COMPLETED.contains(entries.get(place).kind())) {
                completed.put(place, folded(reader.read(entries.get(place).title())));
            }
        }
    }

    private static String folded(Reading reading) {
        return reading.words().stream().map(Reading.Word::folded).collect(Collectors.joining(" "));
    }

    private static String inItsLanguage(Entry entry) {
        return inLanguage(entry, entry.language());
    }

    private static String inLanguage(Entry entry, String language) {
        return entry.kind().id() + "/" + entry.id() + "/" + language;
    }

    /**
     * Builds a finder in memory; takes a while, so do it in the background.
     *
     * @param entries  what can be found
     * @param synonyms words that stand for each other
     * @param aliases  the showroom's own words for topics; they lead to the topics and are never shown
     */
    public static Finder of(
            Collection<Entry> entries, Collection<Synonym> synonyms, Map<String, TopicId> aliases) {
        Map<String, List<String>> byTopic = aliases.entrySet().stream().collect(Collectors.groupingBy(
                alias -> alias.getValue().value(), Collectors.mapping(Map.Entry::getKey, Collectors.toList())));
        List<Entry> named = entries.stream()
                .map(entry -> entry.kind() == Kind.EXPLAINER && byTopic.containsKey(entry.id())
                        ? entry.withNames(Stream.concat(
                                entry.names().stream(), byTopic.get(entry.id()).stream()).toList())
                        : entry)
                .toList();
        return new Finder(named, synonyms);
    }

    /** How many entries there are. */
    public int size() {
        return index.entries().size();
    }

    /** An entry at its place, and how well it matches. */
    private record Ranked(int place, Entry entry, double score) {}

    /** Finds what the query asks for. */
    public Results find(Query query) {
        String text = query.text().substring(0, Math.min(query.text().length(), Query.LONGEST));
        IntentReader.Understood understood = intents.read(text);
        Reading reading = reader.read(understood.words());
        Optional<Spelling.Right> right = spelling.putRight(understood.words(), reading);
        Optional<Reading> putRight = right.map(each -> reader.read(each.text()));
        List<Ranked> ranked = ranked(query, understood, reading, putRight);
        List<Ranked> first = ranked.subList(0, Math.min(query.limit(), ranked.size()));
        List<Hit> hits = hits(first, reading, putRight);
        List<Hit> nearest = hits.isEmpty() ? hits(nearest(query, reading), reading, putRight) : List.of();
        return new Results(
                hits,
                groups(ranked),
                completions(query, reading),
                right.filter(Spelling.Right::shown).map(Spelling.Right::text),
                understood.intent(),
                nearest);
    }

    private List<Ranked> ranked(
            Query query, IntentReader.Understood understood, Reading reading, Optional<Reading> putRight) {
        float[] scores = reading.words().isEmpty()
                ? new float[index.entries().size()]
                : index.scores(clauses.of(reading, putRight, query.language()));
        Intent intent = understood.intent();
        boolean otherWords = !reader.read(understood.rest()).words().isEmpty();
        List<Ranked> candidates = wanted(query)
                .mapToObj(place -> ranked(query, place, scores[place]))
                .filter(each -> each.score() > 0 || !intent.isNone() && each.entry().kind() == Kind.UNIT)
                .toList();
        double best = candidates.stream().mapToDouble(Ranked::score).max().orElse(0);
        double word = best > 0 ? best : 1;
        return candidates.stream()
                .map(each -> intent.isNone() || each.entry().kind() != Kind.UNIT
                        ? each
                        : new Ranked(each.place(), each.entry(),
                                fit(intent, each.entry()) * word * (each.score() > 0 && otherWords ? 1 : 0.9)
                                        + (otherWords && fit(intent, each.entry()) > 0 ? each.score() : 0)))
                .filter(each -> each.score() > 0 && each.score() >= NOISE * best)
                .sorted(Comparator.comparingDouble(Ranked::score).reversed()
                        .thenComparing(each -> each.entry().price().map(price -> price.cents()).orElse(0L))
                        .thenComparing(each -> each.entry().kind())
                        .thenComparing(each -> each.entry().id()))
                .toList();
    }

    /** How a unit fits what is asked of the stock: 0 if it does not. */
    private static double fit(Intent intent, Entry unit) {
        if (unit.price().isEmpty() || !intent.takes(unit.price().get())) {
            return 0;
        }
        double fit = FITS;
        for (Set<FeatureId> oneOf : intent.equipment()) {
            if (oneOf.stream().noneMatch(feature -> unit.tags().contains(Tag.fitted(feature)))) {
                if (oneOf.stream().noneMatch(feature -> unit.tags().contains(Tag.unverified(feature)))) {
                    return 0;
                }
                fit = MAY_FIT;
            }
        }
        return fit;
    }

    private IntStream wanted(Query query) {
        Map<Tag.Of, Set<Tag>> only = query.only().stream()
                .collect(Collectors.groupingBy(Tag::of, Collectors.toSet()));
        return IntStream.range(0, index.entries().size()).filter(place -> {
            Entry entry = index.entries().get(place);
            return isIn(query.language(), entry)
                    && (query.kinds().isEmpty() || query.kinds().contains(entry.kind()))
                    && only.entrySet().stream().allMatch(of -> carries(entry, of.getKey(), of.getValue()));
        });
    }

    /** An entry is shown in its own language, and in others where there is no translation of it. */
    private boolean isIn(String language, Entry entry) {
        if (entry.language().equals(language)) {
            return true;
        }
        return !translated.contains(inLanguage(entry, language))
                && entryLanguages.stream()
                        .filter(each -> translated.contains(inLanguage(entry, each)))
                        .findFirst()
                        .filter(entry.language()::equals)
                        .isPresent();
    }

    private static boolean carries(Entry entry, Tag.Of of, Set<Tag> oneOf) {
        return entry.tags().stream().anyMatch(oneOf::contains)
                || of == Tag.Of.MACHINE_CLASS && entry.tags().stream().noneMatch(tag -> tag.of() == of);
    }

    private Ranked ranked(Query query, int place, double score) {
        Entry entry = index.entries().get(place);
        double favour = query.favoured().isEmpty()
                ? 1
                : entry.tags().stream().map(query.favoured()::get).filter(Objects::nonNull)
                        .mapToDouble(Double::doubleValue).max().orElse(1);
        return new Ranked(place, entry, score * entry.boost() * favour);
    }

    private List<Hit> hits(List<Ranked> ranked, Reading reading, Optional<Reading> putRight) {
        if (ranked.isEmpty()) {
            return List.of();
        }
        List<Excerpts.Shown> shown = excerpts.of(
                ranked.stream().map(Ranked::place).toList(), clauses.marking(reading, putRight));
        List<Hit> hits = new ArrayList<>();
        for (int i = 0; i < ranked.size(); i++) {
            Entry entry = ranked.get(i).entry();
            hits.add(new Hit(entry.kind(), entry.id(), shown.get(i).title(), shown.get(i).section(),
                    shown.get(i).excerpt(), ranked.get(i).score()));
        }
        return hits;
    }

    private static List<Results.Group> groups(List<Ranked> ranked) {
        Map<Kind, Integer> counts = new EnumMap<>(Kind.class);
        ranked.forEach(each -> counts.merge(each.entry().kind(), 1, Integer::sum));
        return ranked.stream()
                .map(each -> each.entry().kind())
                .distinct()
                .map(kind -> new Results.Group(kind, counts.getOrDefault(kind, 0)))
                .toList();
    }

    private List<String> completions(Query query, Reading reading) {
        if (!reading.typing()) {
            return List.of();
        }
        float[] begun = index.scores(clauses.beginnings(reading));
        String typed = folded(reading);
        return wanted(query.withKinds(COMPLETED))
                .filter(place -> begun[place] > 0)
                .mapToObj(place -> ranked(query, place, 1))
                .map(each -> new Completion(
                        each.entry().title(), completed.getOrDefault(each.place(), ""), each.score()))
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

    private record Completion(String words, String folded, double weight) {}

    private List<Ranked> nearest(Query query, Reading reading) {
        float[] scores = index.scores(clauses.nearest(reading));
        var topics = new Query(query.text(), query.language(), Set.of(Kind.EXPLAINER), Set.of(), query.favoured(), 1);
        return wanted(topics)
                .mapToObj(place -> ranked(query, place, scores[place]))
                .sorted(Comparator.comparingDouble(Ranked::score).reversed()
                        .thenComparing(each -> each.entry().id()))
                .limit(NEAREST)
                .toList();
    }

    @Override
    public String toString() {
        return "Finder over " + size() + " entries in " + Arrays.toString(entryLanguages.toArray());
    }
}
