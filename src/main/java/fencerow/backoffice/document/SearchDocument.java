package fencerow.backoffice.document;

import java.util.List;

/**
 * What {@code search} prints.
 *
 * @param language of the sentences, as a BCP 47 tag
 * @param words    as typed
 * @param hits     best first
 */
public record SearchDocument(String language, String words, List<HitEntry> hits) {
    /**
     * Something found.
     *
     * @param id      of its kind
     * @param kind    what it is, such as {@code explainer} or {@code word}
     * @param title   as shown
     * @param excerpt the passage that fits best, plain
     */
    public record HitEntry(String id, String kind, String title, String excerpt) {}
}
