package fencerow.explainers;

import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/**
 * A trade word in plain words.
 *
 * @param id    its id
 * @param word  as the trade says it
 * @param means in one or two sentences
 * @param also  what else people call it
 * @param topic the explainer that tells more
 */
public record GlossaryWord(String id, String word, String means, List<String> also, Optional<TopicId> topic) {
    /** Copies the list. */
    public GlossaryWord {
        also = List.copyOf(also);
    }
}
