package fencerow.content;

import fencerow.explainers.Block;
import fencerow.explainers.Inline;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.StreamSupport;
import org.commonmark.ext.gfm.tables.TableBlock;
import org.commonmark.ext.gfm.tables.TableHead;
import org.commonmark.ext.gfm.tables.TableRow;
import org.commonmark.ext.gfm.tables.TablesExtension;
import org.commonmark.node.BulletList;
import org.commonmark.node.Document;
import org.commonmark.node.Heading;
import org.commonmark.node.ListBlock;
import org.commonmark.node.Node;
import org.commonmark.node.OrderedList;
import org.commonmark.node.Paragraph;
import org.commonmark.node.SourceSpan;
import org.commonmark.parser.IncludeSourceSpans;
import org.commonmark.parser.Parser;

/** Turns CommonMark into our own blocks; whatever our blocks cannot hold is reported with its line. */
final class MarkdownReader {
    private static final int HEADING_LEVEL = 2;
    private static final int DEEPEST = 20;
    private static final String OFFERING = "{offering}";
    private static final String PRICE = "{price}";

    private final SourceFile file;
    private final Problems problems;
    private final InlineReader inlines;

    MarkdownReader(SourceFile file, Ids ids, Problems problems) {
        this.file = file;
        this.problems = problems;
        this.inlines = new InlineReader(file, ids, problems);
    }

    /**
     * Reads the text of an article.
     *
     * @param isFeature whether the program can draw offering and price for its topic
     */
    List<Block> read(String text, boolean isFeature) {
        Parser parser = Parser.builder()
                .extensions(List.of(TablesExtension.create()))
                .includeSourceSpans(IncludeSourceSpans.BLOCKS_AND_INLINES)
                .maxOpenBlockParsers(DEEPEST)
                .build();
        List<Block> blocks = new ArrayList<>();
        for (Node node : childrenOf(parser.parse(text))) {
            block(node, isFeature, blocks);
        }
        return blocks;
    }

    private void block(Node node, boolean isFeature, List<Block> blocks) {
        if (node instanceof Heading heading) {
            if (heading.getLevel() != HEADING_LEVEL) {
                error(node, "a heading of another level than ##", "start it with ##");
            }
            blocks.add(new Block.Heading(inlines.plain(heading)));
        } else if (node instanceof Paragraph) {
            blocks.add(paragraph(node, isFeature));
        } else if (node instanceof BulletList || node instanceof OrderedList) {
            blocks.add(points((ListBlock) node));
        } else if (node instanceof TableBlock) {
            blocks.add(table(node));
        } else {
            error(node, describe(node) + " cannot be shown", "use paragraphs, lists and tables only");
        }
    }

    private Block paragraph(Node node, boolean isFeature) {
        List<Inline> words = inlines.read(node);
        String plain = words.stream().map(Inline::words).collect(Collectors.joining()).strip();
        if (plain.equals(OFFERING) || plain.equals(PRICE)) {
            if (!isFeature) {
                error(node, "[" + plain + "] stands in an article that is about no feature", "delete it");
            }
            return plain.equals(PRICE) ? new Block.PriceNote() : new Block.OfferingTable();
        }
        if (plain.contains("{") || plain.contains("}")) {
            error(node, "a brace stands in the text", "put {offering} or {price} alone between blank lines");
        }
        return new Block.Paragraph(words);
    }

    private Block points(ListBlock list) {
        List<List<Inline>> points = new ArrayList<>();
        for (Node item : childrenOf(list)) {
            List<Node> parts = childrenOf(item);
            if (parts.size() == 1 && parts.get(0) instanceof Paragraph) {
                points.add(inlines.read(parts.get(0)));
            } else {
                error(item, "a point of a list holds other than one run of words",
                        "write each point as one paragraph without lists or tables in it");
            }
        }
        return new Block.Points(list instanceof OrderedList, points);
    }

    private Block table(Node table) {
        List<String> head = new ArrayList<>();
        List<List<String>> rows = new ArrayList<>();
        for (Node part : childrenOf(table)) {
            for (Node row : childrenOf(part)) {
                if (row instanceof TableRow) {
                    List<String> cells = childrenOf(row).stream().map(inlines::plain).toList();
                    if (part instanceof TableHead) {
                        head.addAll(cells);
                    } else {
                        rows.add(cells);
                    }
                }
            }
        }
        return new Block.Table(head, rows);
    }

    private void error(Node node, String what, String whatToDo) {
        problems.error(placeOf(file, node), what, whatToDo);
    }

    /** What a writer would call it. */
    static String describe(Node node) {
        return switch (node.getClass().getSimpleName()) {
            case "HtmlBlock", "HtmlInline" -> "HTML";
            case "Image" -> "a picture";
            case "FencedCodeBlock", "IndentedCodeBlock", "Code" -> "program text (indented by four blanks or in `)";
            case "BlockQuote" -> "a quotation (>)";
            case "ThematicBreak" -> "a line across the page";
            case "LinkReferenceDefinition" -> "a link defined apart from its words";
            default -> "this";
        };
    }

    static List<Node> childrenOf(Node node) {
        List<Node> children = new ArrayList<>();
        for (Node child = node.getFirstChild(); child != null; child = child.getNext()) {
            children.add(child);
        }
        return children;
    }

    /** The first line of the node, or of the nearest node around it that has one. */
    static Place placeOf(SourceFile file, Node node) {
        Node at = node;
        while (at.getSourceSpans().isEmpty() && at.getParent() != null && !(at.getParent() instanceof Document)) {
            at = at.getParent();
        }
        return file.at(StreamSupport.stream(at.getSourceSpans().spliterator(), false)
                        .mapToInt(SourceSpan::getLineIndex)
                        .min()
                        .orElse(0)
                + 1);
    }
}
