package fencerow.search;

import java.util.Map;
import java.util.Set;

/**
 * What is looked for.
 *
 * @param text     as typed; a last word that no blank follows is taken as still being typed
 * @param language of the session, as a BCP 47 tag
 * @param kinds    the kinds of hits wanted; empty for all
 * @param only     tags that hits must carry: one of those given of each sort; empty for no filter
 * @param favoured tags that matter to this shopper, each with the factor its entries' scores are multiplied by
 * @param limit    the most hits given back, 1 or more
 */
public record Query(
        String text, String language, Set<Kind> kinds, Set<Tag> only, Map<Tag, Double> favoured, int limit) {
    /** Longest text that is read; the rest is cut off. */
    static final int LONGEST = 200;

    /** @throws IllegalArgumentException if the limit is below 1 or a factor is not above 0 */
    public Query {
        kinds = Set.copyOf(kinds);
        only = Set.copyOf(only);
        favoured = Map.copyOf(favoured);
        if (limit < 1) {
            throw new IllegalArgumentException("limit [" + limit + "] is below 1; ask for at least one hit");
        }
        favoured.forEach((tag, factor) -> {
            if (!(factor > 0 && Double.isFinite(factor))) {
                throw new IllegalArgumentException("factor [" + factor + "] of " + tag + " is not above 0");
            }
        });
    }

    /** Looks for words everywhere, at most 20 hits. */
    public static Query of(String text, String language) {
        return new Query(text, language, Set.of(), Set.of(), Map.of(), 20);
    }

    /** The same query for these kinds of hits. */
    public Query withKinds(Set<Kind> wanted) {
        return new Query(text, language, wanted, only, favoured, limit);
    }

    /** The same query for hits that carry these tags. */
    public Query withOnly(Set<Tag> tags) {
        return new Query(text, language, kinds, tags, favoured, limit);
    }

    /** The same query by a shopper to whom these tags matter. */
    public Query withFavoured(Map<Tag, Double> factors) {
        return new Query(text, language, kinds, only, factors, limit);
    }

    /** The same query with another limit. */
    public Query withLimit(int most) {
        return new Query(text, language, kinds, only, favoured, most);
    }
}
