package fencerow.kiosk.explainer;

import fencerow.explainers.Block;
import fencerow.explainers.Drawing;
import fencerow.explainers.GlossaryWord;
import fencerow.kiosk.kit.OfferingTable;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What the screen of an explainer shows.
 *
 * @param where    the stop of the walk around the tractor
 * @param figures  the thing, and where it helps, how it is without it
 * @param blocks   the text, its trade words linked at their first place
 * @param offering lines of the table of offerings; empty if it is about no feature
 * @param prices   ways to add the feature
 * @param cautions what can hurt someone
 * @param words    trade words linked in the text
 * @param related  what is worth reading next
 * @param quiz     the question to check oneself with
 * @param sums     calculations that belong with it
 */
record ExplainerModel(
        String title,
        String summary,
        String where,
        List<DrawnFigure> figures,
        List<Block> blocks,
        List<OfferingTable.Line> offering,
        List<PriceLine> prices,
        List<String> cautions,
        List<GlossaryWord> words,
        List<Related> related,
        Optional<QuestionId> quiz,
        List<Sum> sums) {
    ExplainerModel {
        figures = List.copyOf(figures);
        blocks = List.copyOf(blocks);
        offering = List.copyOf(offering);
        prices = List.copyOf(prices);
        cautions = List.copyOf(cautions);
        words = List.copyOf(words);
        related = List.copyOf(related);
        sums = List.copyOf(sums);
    }

    /**
     * A drawing.
     *
     * @param caption     below it; empty where it stands alone
     * @param alternative what it shows, in words
     * @param parts       the name of each part that has an explainer of its own, by its topic
     */
    record DrawnFigure(Drawing drawing, String caption, String alternative, Map<String, String> parts) {
        DrawnFigure {
            parts = Map.copyOf(parts);
        }
    }

    /**
     * One way to add the feature.
     *
     * @param name  of the add-on
     * @param price in words
     * @param by    who can fit it and how long that takes
     */
    record PriceLine(String name, String price, String by) {}

    /** A calculation: its id and the question it answers. */
    record Sum(String calculation, String ask) {}

    /** Another explainer. */
    record Related(TopicId topic, String title) {}
}
