package fencerow.visit;

import fencerow.sizing.catalogue.Topic;
import fencerow.terms.TopicId;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

/**
 * The calculations that the showroom offers.
 *
 * @param sheets in the order they are listed
 */
public record Workbook(List<Worksheet> sheets) {
    /** Copies the sheets. */
    public Workbook {
        sheets = List.copyOf(sheets);
    }

    /** The sheet of a calculation. */
    public Optional<Worksheet> find(String calculation) {
        return sheets.stream().filter(each -> each.id().equals(calculation)).findFirst();
    }

    /** Those that belong with an explainer. */
    public List<Worksheet> about(TopicId topic) {
        return sheets.stream().filter(each -> each.topics().contains(topic)).toList();
    }

    /** Those of one area. */
    public List<Worksheet> of(Topic area) {
        return sheets.stream().filter(each -> each.calculation().topic() == area).toList();
    }

    /** The areas that have any, in their order. */
    public List<Topic> areas() {
        return Arrays.stream(Topic.values()).filter(each -> !of(each).isEmpty()).toList();
    }
}
