package fencerow.content;

import fencerow.wording.Readability;

/**
 * How easy one of the content's texts is to read.
 *
 * @param key         of the words, or {@code explainers/} and the topic
 * @param readability what was counted in it
 */
public record Legibility(String key, Readability readability) {
    /** Whether it is an article. */
    public boolean isArticle() {
        return key.startsWith(Translatable.ARTICLES);
    }
}
