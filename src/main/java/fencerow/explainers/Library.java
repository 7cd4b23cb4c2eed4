package fencerow.explainers;

import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/**
 * All explainers and trade words of one language, in reading order, and the pictures beside them.
 *
 * @param language  as a BCP 47 tag
 * @param explainers one for each topic
 * @param glossary  the trade words
 * @param pictures  the same in all languages; what they show in words is among the language's texts
 */
public record Library(
        String language, List<Explainer> explainers, List<GlossaryWord> glossary, Pictures pictures) {
    /** Copies the lists. */
    public Library {
        explainers = List.copyOf(explainers);
        glossary = List.copyOf(glossary);
    }

    /** A library without pictures. */
    public Library(String language, List<Explainer> explainers, List<GlossaryWord> glossary) {
        this(language, explainers, glossary, Pictures.NONE);
    }

    /** The same with these pictures. */
    public Library withPictures(Pictures shown) {
        return new Library(language, explainers, glossary, shown);
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
