package fencerow.content;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Sees that an article's particulars, and what the program draws in it, are the same in all languages. */
final class ParticularsCheck {
    private static final Map<String, Function<Explainer, Object>> SAME = Map.of(
            "stop", Explainer::stop,
            "related", Explainer::related,
            "quiz", Explainer::quiz,
            "cautions", Explainer::cautions);

    private final Sources sources;
    private final Problems problems;

    ParticularsCheck(Sources sources, Problems problems) {
        this.sources = sources;
        this.problems = problems;
    }

    /** Holds a translation against the original. */
    void check(Explainer explainer, Explainer original) {
        String name = explainer.language() + "/" + Translatable.ARTICLES + explainer.topic() + ".md";
        String other = sources.contentName(name.replaceFirst("^[^/]+", original.language()));
        SAME.forEach((particular, value) -> {
            if (!value.apply(explainer).equals(value.apply(original))) {
                Place place = sources.article(name)
                        .flatMap(file -> Article.of(file, new Problems()))
                        .map(article -> article.placeOf(particular))
                        .orElse(new Place(sources.contentName(name), 1));
                problems.error(place, "[" + particular + "] is not the same as in " + other, "copy it from there");
            }
        });
        if (!drawn(explainer).equals(drawn(original))) {
            problems.error(new Place(sources.contentName(name), 1),
                    "{offering} and {price} are not where they are in " + other, "put them at the same places");
        }
    }

    /** What the program draws in it, and below which heading. */
    private static List<String> drawn(Explainer explainer) {
        List<String> drawn = new ArrayList<>();
        int heading = 0;
        for (Block block : explainer.blocks()) {
            if (block instanceof Block.Heading) {
                heading++;
            } else if (block instanceof Block.OfferingTable || block instanceof Block.PriceNote) {
                drawn.add(block.getClass().getSimpleName() + " below heading " + heading);
            }
        }
        return drawn;
    }
}
