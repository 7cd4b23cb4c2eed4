package fencerow.search;

import fencerow.terms.Money;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * One thing that can be found, in one language.
 *
 * @param kind     what it is
 * @param id       its id among its kind
 * @param language of its words, as a BCP 47 tag
 * @param title    what it is called on screen
 * @param names    what else people call it, in any language; searched, never shown
 * @param related  words that lead to it without being its name; searched, never shown
 * @param passages its text, in reading order; the first one is shown when no passage holds a word of the query
 * @param tags     what it is about
 * @param price    what it costs, for units
 * @param boost    how much it matters against others that match as well; above 0, most near 1
 */
public record Entry(
        Kind kind,
        String id,
        String language,
        String title,
        List<String> names,
        List<String> related,
        List<Passage> passages,
        Set<Tag> tags,
        Optional<Money> price,
        double boost) {
    /** @throws IllegalArgumentException if the boost is not above 0 */
    public Entry {
        names = List.copyOf(names);
        related = List.copyOf(related);
        passages = List.copyOf(passages);
        tags = Set.copyOf(tags);
        if (!(boost > 0 && Double.isFinite(boost))) {
            throw new IllegalArgumentException(
                    "boost [" + boost + "] of " + kind.id() + " [" + id + "] is not above 0; use 1 for the usual");
        }
    }

    /** The same entry that people also call by these names. */
    Entry withNames(List<String> more) {
        return new Entry(kind, id, language, title, more, related, passages, tags, price, boost);
    }
}
