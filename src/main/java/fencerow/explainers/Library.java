package fencerow.explainers;

import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/**
 * All explainers and trade words of one language, in reading order.
 *
 * @param language  as a BCP 47 tag
 * @param explainers one for each topic
 * @param glossary  the trade words
 */
public record Library(String language, List<Explainer> explainers, List<GlossaryWord> glossary) {
    /** Copies the lists. */
    public Library {
        explainers = List.copyOf(explainers);
        glossary = List.copyOf(glossary);
    }

    /** The explainer of the topic. */
    public Optional<Explainer> find(TopicId topic) {
        return explainers.stream().filter(each -> each.topic().equals(topic)).findFirst();
    }

    /** The trade word with the id. */
    public Optional<GlossaryWord> findWord(String id) {
        return glossary.stream().filter(each -> each.id().equals(id)).findFirst();
    }
}
