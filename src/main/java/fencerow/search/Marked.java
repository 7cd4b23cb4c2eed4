package fencerow.search;

import java.util.List;

/**
 * Words with the stretches that match the query.
 *
 * @param words the words
 * @param spans the stretches, in order, not overlapping
 */
public record Marked(String words, List<Span> spans) {
    /**
     * A stretch of the words.
     *
     * @param from index of its first character
     * @param to   index after its last character
     */
    public record Span(int from, int to) {}

    /** Copies the spans. */
    public Marked {
        spans = List.copyOf(spans);
    }

    /** Words of which none match. */
    public static Marked plain(String words) {
        return new Marked(words, List.of());
    }
}
