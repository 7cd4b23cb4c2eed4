package fencerow.search;

import java.util.List;
import java.util.Optional;

/**
 * What a query comes to; never a dead end.
 *
 * @param hits        best first, at most as many as the query's limit
 * @param groups      how many hits there are of each kind, the kind of the best hit first; those that the query's
 *                    filter of kinds holds back among them
 * @param facets      how many hits there are by stop, kind of work and machine class, those that the query's filter of
 *                    the same sort holds back among them
 * @param completions phrases that the words typed so far may be the beginning of, likeliest first
 * @param didYouMean  the query with misspelt words put right, where a word of it is known nowhere
 * @param intent      what was understood beyond the words
 * @param nearest     where there are no hits: the topics that come nearest; else empty
 */
public record Results(
        List<Hit> hits,
        List<Group> groups,
        List<Facet> facets,
        List<String> completions,
        Optional<String> didYouMean,
        Intent intent,
        List<Hit> nearest) {
    /**
     * The hits of one kind.
     *
     * @param kind  the kind
     * @param count how many there are, those beyond the limit among them
     */
    public record Group(Kind kind, int count) {}

    /**
     * The hits that carry a tag, or are about everything of its sort.
     *
     * @param count how many there are, those beyond the limit among them
     */
    public record Facet(Tag tag, int count) {}

    /** Copies the lists. */
    public Results {
        hits = List.copyOf(hits);
        groups = List.copyOf(groups);
        facets = List.copyOf(facets);
        completions = List.copyOf(completions);
        nearest = List.copyOf(nearest);
    }

    /** The hits of the kind, best first. */
    public List<Hit> of(Kind kind) {
        return hits.stream().filter(hit -> hit.kind() == kind).toList();
    }
}
