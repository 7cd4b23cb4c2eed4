package fencerow.content;

import fencerow.explainers.Inline;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.commonmark.node.Emphasis;
import org.commonmark.node.HardLineBreak;
import org.commonmark.node.Link;
import org.commonmark.node.Node;
import org.commonmark.node.SoftLineBreak;
import org.commonmark.node.StrongEmphasis;
import org.commonmark.node.Text;

/** Turns the runs of words within a CommonMark block into our own. Links lead to topics and glossary words only. */
final class InlineReader {
    private static final String TOPIC = "topic:";
    private static final String WORD = "word:";

    private final SourceFile file;
    private final Ids ids;
    private final Problems problems;

    InlineReader(SourceFile file, Ids ids, Problems problems) {
        this.file = file;
        this.ids = ids;
        this.problems = problems;
    }

    /** The runs of words of one block. */
    List<Inline> read(Node block) {
        List<Inline> runs = new ArrayList<>();
        var plain = new StringBuilder();
        for (Node node : MarkdownReader.childrenOf(block)) {
            if (node instanceof Text text) {
                plain.append(text.getLiteral());
            } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
                plain.append(' ');
            } else {
                finish(plain, runs);
                special(node).ifPresent(runs::add);
            }
        }
        finish(plain, runs);
        return runs;
    }

    private static void finish(StringBuilder plain, List<Inline> runs) {
        if (plain.length() > 0) {
            runs.add(new Inline.Text(plain.toString()));
            plain.setLength(0);
        }
    }

    private Optional<Inline> special(Node node) {
        if (node instanceof StrongEmphasis) {
            return Optional.of(new Inline.Strong(plain(node)));
        }
        if (node instanceof Emphasis) {
            return Optional.of(new Inline.Emphasis(plain(node)));
        }
        if (node instanceof Link link) {
            return link(link);
        }
        error(node, MarkdownReader.describe(node) + " cannot be shown", "use plain, **strong** and *emphasized* words");
        return Optional.empty();
    }

    private Optional<Inline> link(Link link) {
        String to = link.getDestination();
        Place place = MarkdownReader.placeOf(file, link);
        String words = plain(link);
        if (to.startsWith(TOPIC)) {
            String topic = to.substring(TOPIC.length());
            return ids.require(topic, place, Kind.TOPIC)
                    ? Optional.of(new Inline.TopicLink(words, new TopicId(topic)))
                    : Optional.empty();
        }
        if (to.startsWith(WORD)) {
            String word = to.substring(WORD.length());
            ids.require(word, place, Kind.WORD);
            return Optional.of(new Inline.WordLink(words, word));
        }
        error(link, "the link leads to [" + to + "]", "link to topic:... or word:... only");
        return Optional.empty();
    }

    /** Words only; anything else within is reported. */
    String plain(Node around) {
        var plain = new StringBuilder();
        for (Node node : MarkdownReader.childrenOf(around)) {
            if (node instanceof Text text) {
                plain.append(text.getLiteral());
            } else if (node instanceof SoftLineBreak || node instanceof HardLineBreak) {
                plain.append(' ');
            } else {
                error(node, MarkdownReader.describe(node) + " cannot stand within other words", "write plain words");
            }
        }
        return plain.toString().strip();
    }

    private void error(Node node, String what, String whatToDo) {
        problems.error(MarkdownReader.placeOf(file, node), what, whatToDo);
    }
}
