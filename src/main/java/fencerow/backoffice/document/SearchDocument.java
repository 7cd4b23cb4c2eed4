package fencerow.backoffice.document;

import fencerow.search.Hit;
import fencerow.search.Results;
import java.util.List;
import java.util.Optional;

/**
 * What {@code search} prints.
 *
 * @param language   of the words, as a BCP 47 tag
 * @param words      as typed
 * @param hits       best first
 * @param didYouMean the words put right, where one of them is known nowhere
 * @param nearest    where there are no hits: the topics that come nearest; else empty
 */
public record SearchDocument(
        String language, String words, List<HitEntry> hits, Optional<String> didYouMean, List<HitEntry> nearest) {
    /**
     * Something found.
     *
     * @param id      its id among its kind
     * @param kind    {@code explainer}, {@code word}, {@code job}, {@code attachment}, {@code unit}, {@code quiz} or
     *                {@code calculation}
     * @param title   what it is called
     * @param section heading of the section the excerpt is from; empty if it is from none
     * @param excerpt the passage that matches best
     */
    public record HitEntry(String id, String kind, String title, String section, String excerpt) {
        private static HitEntry of(Hit hit) {
            return new HitEntry(
                    hit.id(), hit.kind().id(), hit.title().words(), hit.section(), hit.excerpt().words());
        }
    }

    /** Writes down what was found. */
    public static SearchDocument of(String language, String words, Results results) {
        return new SearchDocument(
                language,
                words,
                results.hits().stream().map(HitEntry::of).toList(),
                results.didYouMean(),
                results.nearest().stream().map(HitEntry::of).toList());
    }
}
