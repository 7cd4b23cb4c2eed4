package fencerow.search;

import fencerow.terms.FeatureId;
import java.util.ArrayList;
import java.util.BitSet;
import java.util.Collection;
import java.util.EnumMap;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * Which entries a query lets through, and how much each matters beyond its words. Entries are numbered by their places;
 * all that is asked at every keystroke is kept as sets of those numbers.
 */
final class Sieve {
    private static final String ANY_OTHER_LANGUAGE = "";

    private final List<Entry> entries;
    private final Map<String, BitSet> byLanguage = new HashMap<>();
    private final Map<Kind, BitSet> byKind = new EnumMap<>(Kind.class);
    private final Map<Tag, BitSet> byTag = new HashMap<>();
    private final BitSet ofAnyClass = new BitSet();

    Sieve(List<Entry> entries) {
        this.entries = List.copyOf(entries);
        BitSet ofSomeClass = new BitSet();
        for (int place = 0; place < entries.size(); place++) {
            Entry entry = entries.get(place);
            byKind.computeIfAbsent(entry.kind(), kind -> new BitSet()).set(place);
            for (Tag tag : entry.tags()) {
                byTag.computeIfAbsent(tag, any -> new BitSet()).set(place);
                if (tag.of() == Tag.Of.MACHINE_CLASS) {
                    ofSomeClass.set(place);
                }
            }
        }
        ofAnyClass.set(0, entries.size());
        ofAnyClass.andNot(ofSomeClass);
        learnLanguages();
    }

    /** An entry is found in its own language, and in others where there is no translation of it. */
    private void learnLanguages() {
        Map<Kind, Map<String, List<Integer>>> translations = new EnumMap<>(Kind.class);
        Set<String> languages = new TreeSet<>(Set.of(ANY_OTHER_LANGUAGE));
        for (int place = 0; place < entries.size(); place++) {
            Entry entry = entries.get(place);
            languages.add(entry.language());
            translations.computeIfAbsent(entry.kind(), kind -> new HashMap<>())
                    .computeIfAbsent(entry.id(), id -> new ArrayList<>())
                    .add(place);
        }
        languages.forEach(language -> byLanguage.put(language, new BitSet()));
        for (Map<String, List<Integer>> ofKind : translations.values()) {
            for (List<Integer> same : ofKind.values()) {
                Map<String, List<Integer>> each = same.stream()
                        .collect(Collectors.groupingBy(place -> entries.get(place).language()));
                List<Integer> first = each.getOrDefault(new TreeSet<>(each.keySet()).first(), List.of());
                byLanguage.forEach((language, places) -> each.getOrDefault(language, first).forEach(places::set));
            }
        }
    }

    /** Places of what may be found in a session of the language. */
    BitSet in(String language) {
        return byLanguage.containsKey(language) ? all(byLanguage, language) : all(byLanguage, ANY_OTHER_LANGUAGE);
    }

    /** Places of the entries of the kind. */
    BitSet of(Kind kind) {
        return all(byKind, kind);
    }

    /** Places of the entries that carry the tag. */
    private BitSet with(Tag tag) {
        return all(byTag, tag);
    }

    /** Places of what a filter by the tag lets through: what names no machine class is about all of them. */
    BitSet about(Tag tag) {
        BitSet about = (BitSet) with(tag).clone();
        if (tag.of() == Tag.Of.MACHINE_CLASS) {
            about.or(ofAnyClass);
        }
        return about;
    }

    /** Every tag of the sort that an entry carries. */
    List<Tag> tags(Tag.Of of) {
        return byTag.keySet().stream().filter(tag -> tag.of() == of).toList();
    }

    private static <K> BitSet all(Map<K, BitSet> places, K key) {
        return places.getOrDefault(key, new BitSet());
    }

    /** Places of the entries that are any of these. */
    static <T> BitSet anyOf(Collection<T> wanted, Function<T, BitSet> places) {
        BitSet any = new BitSet();
        wanted.forEach(each -> any.or(places.apply(each)));
        return any;
    }

    /** Multiplies the scores by what the entries matter to this shopper. */
    void weigh(float[] scores, Map<Tag, Double> favoured) {
        float[] factors = new float[favoured.isEmpty() ? 0 : scores.length];
        favoured.forEach((tag, factor) -> with(tag).stream()
                .forEach(place -> factors[place] = Math.max(factors[place], factor.floatValue())));
        for (int place = 0; place < scores.length; place++) {
            if (scores[place] > 0) {
                boolean plain = factors.length == 0 || factors[place] == 0;
                scores[place] *= (float) entries.get(place).boost() * (plain ? 1 : factors[place]);
            }
        }
    }

    /** How a unit fits what is asked of the stock. */
    enum Fit {
        /** It has all of it, at the price. */
        FITS,
        /** Nobody has looked for some of it. */
        MAY_FIT,
        /** It lacks something, or costs too much. */
        FITS_NOT
    }

    /** How the unit at the place fits. */
    Fit fit(Intent intent, int place) {
        if (entries.get(place).price().filter(intent::takes).isEmpty()) {
            return Fit.FITS_NOT;
        }
        Fit fit = Fit.FITS;
        for (Set<FeatureId> oneOf : intent.equipment()) {
            if (oneOf.stream().noneMatch(feature -> with(Tag.fitted(feature)).get(place))) {
                if (oneOf.stream().noneMatch(feature -> with(Tag.unverified(feature)).get(place))) {
                    return Fit.FITS_NOT;
                }
                fit = Fit.MAY_FIT;
            }
        }
        return fit;
    }
}
