package fencerow.search;

import fencerow.terms.FeatureId;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.IntPredicate;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** Which entries a query lets through, and how much each matters beyond its words. */
final class Sieve {
    private final List<Entry> entries;
    private final Set<String> languages = new TreeSet<>();
    private final Set<Translation> translations;

    /** An entry in one language. */
    private record Translation(Kind kind, String id, String language) {
        static Translation of(Entry entry, String language) {
            return new Translation(entry.kind(), entry.id(), language);
        }
    }

    Sieve(List<Entry> entries) {
        this.entries = List.copyOf(entries);
        entries.forEach(entry -> languages.add(entry.language()));
        translations = entries.stream()
                .map(entry -> Translation.of(entry, entry.language()))
                .collect(Collectors.toSet());
    }

    /** Places of entries for which the test holds and which the query's filters let through. */
    IntStream places(Query query, IntPredicate test) {
        Map<Tag.Of, Set<Tag>> only = query.only().stream()
                .collect(Collectors.groupingBy(Tag::of, Collectors.toSet()));
        return IntStream.range(0, entries.size()).filter(test).filter(place -> {
            Entry entry = entries.get(place);
            return isIn(query.language(), entry)
                    && (query.kinds().isEmpty() || query.kinds().contains(entry.kind()))
                    && only.entrySet().stream().allMatch(of -> carries(entry, of.getKey(), of.getValue()));
        });
    }

    /** An entry is found in its own language, and in others where there is no translation of it. */
    private boolean isIn(String language, Entry entry) {
        return entry.language().equals(language)
                || !translations.contains(Translation.of(entry, language))
                        && languages.stream()
                                .filter(each -> translations.contains(Translation.of(entry, each)))
                                .findFirst()
                                .filter(entry.language()::equals)
                                .isPresent();
    }

    private static boolean carries(Entry entry, Tag.Of of, Set<Tag> oneOf) {
        return entry.tags().stream().anyMatch(oneOf::contains)
                || of == Tag.Of.MACHINE_CLASS && entry.tags().stream().noneMatch(tag -> tag.of() == of);
    }

    /** What an entry's word score is multiplied by for this shopper. */
    static double weight(Query query, Entry entry) {
        if (query.favoured().isEmpty()) {
            return entry.boost();
        }
        return entry.boost() * entry.tags().stream()
                .map(query.favoured()::get)
                .filter(Objects::nonNull)
                .mapToDouble(Double::doubleValue)
                .max()
                .orElse(1);
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

    /** How the unit fits. */
    static Fit fit(Intent intent, Entry unit) {
        if (unit.price().filter(intent::takes).isEmpty()) {
            return Fit.FITS_NOT;
        }
        Fit fit = Fit.FITS;
        for (Set<FeatureId> oneOf : intent.equipment()) {
            if (oneOf.stream().noneMatch(feature -> unit.tags().contains(Tag.fitted(feature)))) {
                if (oneOf.stream().noneMatch(feature -> unit.tags().contains(Tag.unverified(feature)))) {
                    return Fit.FITS_NOT;
                }
                fit = Fit.MAY_FIT;
            }
        }
        return fit;
    }
}
