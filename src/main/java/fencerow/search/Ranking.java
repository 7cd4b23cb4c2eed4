package fencerow.search;

import java.util.BitSet;
import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * Scored entries behind a query's filters. All of them are counted, only those that are shown are put in order: a
 * letter may find every unit there is.
 */
final class Ranking {
    /** Sorts of tags that hits are counted by. */
    private static final List<Tag.Of> COUNTED = List.of(Tag.Of.STOP, Tag.Of.WORK, Tag.Of.MACHINE_CLASS);

    private final List<Entry> entries;
    private final Sieve sieve;
    private final float[] scores;
    private final Comparator<Ranked> order;
    /** What matches and passes all filters, and all but that of one sort. */
    private final BitSet passing;
    private final BitSet passingButKind;
    private final Map<Tag.Of, BitSet> passingBut = new EnumMap<>(Tag.Of.class);

    /** An entry at its place, and how well it matches. */
    record Ranked(int place, double score) {}

    /**
     * Ranks entries.
     *
     * @param seen   places of what can be found at all
     * @param scores by place; 0 for what does not match
     */
    Ranking(List<Entry> entries, Sieve sieve, Query query, BitSet seen, float[] scores) {
        this.entries = entries;
        this.sieve = sieve;
        this.scores = scores;
        this.order = Comparator.comparingDouble(Ranked::score).reversed()
                .thenComparing(each -> entry(each).price().map(price -> price.cents()).orElse(0L))
                .thenComparing(each -> entry(each).kind())
                .thenComparing(each -> entry(each).id());
        BitSet matching = (BitSet) seen.clone();
        for (int place = seen.nextSetBit(0); place >= 0; place = seen.nextSetBit(place + 1)) {
            matching.set(place, scores[place] > 0);
        }
        BitSet ofKinds = query.kinds().isEmpty() ? seen : Sieve.anyOf(query.kinds(), sieve::of);
        passingButKind = tagged(matching, query, Optional.empty());
        passing = common(passingButKind, ofKinds);
        COUNTED.forEach(of -> passingBut.put(of, common(tagged(matching, query, Optional.of(of)), ofKinds)));
    }

    /** What carries one of the tags asked for of each sort but one. */
    private BitSet tagged(BitSet matching, Query query, Optional<Tag.Of> but) {
        Map<Tag.Of, Set<Tag>> only = query.only().stream()
                .filter(tag -> but.filter(tag.of()::equals).isEmpty())
                .collect(Collectors.groupingBy(Tag::of, Collectors.toSet()));
        BitSet places = matching;
        for (Set<Tag> oneOf : only.values()) {
            places = common(places, Sieve.anyOf(oneOf, sieve::about));
        }
        return places;
    }

    private Entry entry(Ranked ranked) {
        return entries.get(ranked.place());
    }

    /** All that pass, in no order. */
    Stream<Ranked> stream() {
        return passing.stream().mapToObj(place -> new Ranked(place, scores[place]));
    }

    /** The best, in order. */
    List<Ranked> first(int limit) {
        var worstFirst = new PriorityQueue<>(limit + 1, order.reversed());
        for (int place = passing.nextSetBit(0); place >= 0; place = passing.nextSetBit(place + 1)) {
            Ranked worst = worstFirst.peek();
            if (worst == null || worstFirst.size() < limit || scores[place] >= worst.score()) {
                worstFirst.add(new Ranked(place, scores[place]));
                if (worstFirst.size() > limit) {
                    worstFirst.remove();
                }
            }
        }
        return worstFirst.stream().sorted(order).toList();
    }

    /** How many there are of each kind, the best one's kind first; a filter of kinds takes nothing away here. */
    List<Results.Group> groups() {
        Map<Kind, Results.Group> groups = new EnumMap<>(Kind.class);
        Map<Kind, Double> best = new EnumMap<>(Kind.class);
        for (Kind kind : Kind.values()) {
            BitSet places = common(passingButKind, sieve.of(kind));
            if (!places.isEmpty()) {
                groups.put(kind, new Results.Group(kind, places.cardinality()));
                best.put(kind, places.stream().mapToDouble(place -> scores[place]).max().orElse(0));
            }
        }
        return groups.values().stream()
                .sorted(Comparator.comparing((Results.Group group) -> best.getOrDefault(group.kind(), 0.0)).reversed())
                .toList();
    }

    /** How many carry each tag; a filter by tags of one sort takes nothing away from the others of that sort. */
    List<Results.Facet> facets() {
        return COUNTED.stream()
                .flatMap(of -> sieve.tags(of).stream())
                .map(tag -> new Results.Facet(tag, common(
                        passingBut.getOrDefault(tag.of(), passing), sieve.about(tag)).cardinality()))
                .filter(facet -> facet.count() > 0)
                .sorted(Comparator.comparing((Results.Facet facet) -> facet.tag().of())
                        .thenComparing(facet -> facet.tag().value()))
                .toList();
    }

    private static BitSet common(BitSet one, BitSet other) {
        BitSet both = (BitSet) one.clone();
        both.and(other);
        return both;
    }
}
