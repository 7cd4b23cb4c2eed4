package fencerow.explainers;

import fencerow.terms.QuestionId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/**
 * An article on one topic in one language.
 *
 * @param topic    its topic; a feature's id where it is about a feature
 * @param language of the words, as a BCP 47 tag
 * @param title    its title
 * @param summary  one sentence
 * @param stop     where on a walk around the tractor it belongs
 * @param related  topics worth reading next
 * @param quiz     the question to check oneself with
 * @param cautions ids of the cautions that close it
 * @param blocks   the text
 */
public record Explainer(
        TopicId topic,
        String language,
        String title,
        String summary,
        Stop stop,
        List<TopicId> related,
        Optional<QuestionId> quiz,
        List<String> cautions,
        List<Block> blocks) {
    /** Copies the lists. */
    public Explainer {
        related = List.copyOf(related);
        cautions = List.copyOf(cautions);
        blocks = List.copyOf(blocks);
    }
}
