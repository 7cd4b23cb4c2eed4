package fencerow.printing;

import fencerow.checklist.Because;
import fencerow.checklist.ChecklistLine;
import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.explainers.Inline;
import fencerow.explainers.Library;
import fencerow.terms.FeatureId;
import fencerow.terms.TopicId;
import fencerow.wording.Phrases;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;

/**
 * What the template of the explanations may ask for: the explainer of each thing the shopper got wrong. Tables that the
 * program draws on screen from the stock are left out, and headings with nothing else below them.
 *
 * @param library the explainers of the language
 * @param phrases the words
 */
record ExplanationValues(Library library, Phrases phrases) {
    private static final List<String> KINDS = List.of("heading", "paragraph", "points", "numbered", "table");

    /** One for each line that has an explainer. */
    List<Map<String, Object>> of(List<ChecklistLine> lines) {
        List<Map<String, Object>> all = new ArrayList<>();
        for (ChecklistLine line : lines) {
            topic(line).flatMap(library::find).ifPresent(explainer -> all.add(explanation(line, explainer)));
        }
        return all;
    }

    /** Whether any of the lines has an explainer. */
    boolean any(List<ChecklistLine> lines) {
        return lines.stream().anyMatch(line -> topic(line).flatMap(library::find).isPresent());
    }

    private static Optional<TopicId> topic(ChecklistLine line) {
        Optional<FeatureId> feature = line.template().feature();
        return line.template().topic().or(() -> feature.map(id -> new TopicId(id.value())));
    }

    private Map<String, Object> explanation(ChecklistLine line, Explainer explainer) {
        String why = line.because().stream()
                .filter(Because.WrongBelief.class::isInstance)
                .map(phrases::because)
                .findFirst()
                .orElse("");
        String truth = line.template()
                .feature()
                .flatMap(feature -> phrases.texts().find("feature." + feature + ".truth"))
                .orElse(explainer.summary());
        return Map.of(
                "title", explainer.title(),
                "summary", explainer.summary(),
                "pictures", pictures(explainer.topic()),
                "why", why,
                "truth", truth,
                "atStake", phrases.atStake(line.atStake()),
                "blocks", blocks(explainer),
                "cautions", explainer.cautions().stream()
                        .map(id -> phrases.texts().get("caution." + id))
                        .toList());
    }

    /** The topic's picture and, if there is one, how things are without. */
    private List<Map<String, Object>> pictures(TopicId topic) {
        return Stream.of(library.pictures().of(topic), library.pictures().without(topic))
                .flatMap(Optional::stream)
                .map(picture -> Map.<String, Object>of(
                        "name", picture.name(), "alt", phrases.texts().get(picture.altKey())))
                .toList();
    }

    private static List<Map<String, Object>> blocks(Explainer explainer) {
        List<Block> printed = new ArrayList<>();
        for (Block block : explainer.blocks()) {
            boolean drawn = block instanceof Block.OfferingTable || block instanceof Block.PriceNote;
            if (block instanceof Block.Heading) {
                dropBareHeading(printed);
            }
            if (!drawn) {
                printed.add(block);
            }
        }
        dropBareHeading(printed);
        return printed.stream().map(ExplanationValues::block).toList();
    }

    private static void dropBareHeading(List<Block> blocks) {
        int last = blocks.size() - 1;
        if (last >= 0 && blocks.get(last) instanceof Block.Heading) {
            blocks.remove(last);
        }
    }

    private static Map<String, Object> block(Block block) {
        Map<String, Object> values = new HashMap<>();
        KINDS.forEach(kind -> values.put(kind, false));
        if (block instanceof Block.Heading heading) {
            values.put("heading", true);
            values.put("words", heading.words());
        } else if (block instanceof Block.Paragraph paragraph) {
            values.put("paragraph", true);
            values.put("runs", runs(paragraph.words()));
        } else if (block instanceof Block.Points points) {
            values.put(points.numbered() ? "numbered" : "points", true);
            values.put("each", points.points().stream().map(point -> Map.of("runs", runs(point))).toList());
        } else if (block instanceof Block.Table table) {
            values.put("table", true);
            values.put("head", table.head());
            values.put("rows", table.rows().stream().map(cells -> Map.of("cells", cells)).toList());
        }
        return values;
    }

    private static List<Map<String, Object>> runs(List<Inline> words) {
        return words.stream()
                .map(each -> Map.<String, Object>of("words", each.words(), "strong", isStrong(each)))
                .toList();
    }

    private static boolean isStrong(Inline words) {
        return words instanceof Inline.Strong || words instanceof Inline.Emphasis;
    }
}
