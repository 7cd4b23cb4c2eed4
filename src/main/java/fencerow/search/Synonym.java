package fencerow.search;

import java.util.List;

/**
 * A word of the trade and what people say for it; each is found by the other.
 *
 * @param word as the trade says it
 * @param also what people say, in any language
 */
public record Synonym(String word, List<String> also) {
    /** Copies the list. */
    public Synonym {
        also = List.copyOf(also);
    }
}
