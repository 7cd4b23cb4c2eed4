package fencerow.explainers;

import java.util.List;

/** One piece of an explainer, from top to bottom. */
public sealed interface Block {
    /** A heading; explainers have one level below their title. */
    record Heading(String words) implements Block {}

    /** A paragraph. */
    record Paragraph(List<Inline> words) implements Block {
        /** Copies the words. */
        public Paragraph {
            words = List.copyOf(words);
        }
    }

    /** A list; each entry is one run of words. */
    record Points(boolean numbered, List<List<Inline>> points) implements Block {
        /** Copies the points. */
        public Points {
            points = points.stream().map(List::copyOf).toList();
        }
    }

    /** A table of plain cells; every row is as long as the head. */
    record Table(List<String> head, List<List<String>> rows) implements Block {
        /** Copies the cells. */
        public Table {
            head = List.copyOf(head);
            rows = rows.stream().map(List::copyOf).toList();
        }
    }

    /** Where the program draws how the feature is offered on each machine class. */
    record OfferingTable() implements Block {}

    /** Where the program states who can fit the feature, how long it takes and what it costs. */
    record PriceNote() implements Block {}
}
