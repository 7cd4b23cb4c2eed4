package fencerow.content;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.terms.QuestionId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/** Reads one article: YAML between two lines of hyphens, then CommonMark. Its file has the name of its topic. */
final class ExplainerReader {
    private static final String FENCE = "---";

    private final Ids ids;
    private final IdLists lists;
    private final Problems problems;

    ExplainerReader(Ids ids, IdLists lists, Problems problems) {
        this.ids = ids;
        this.lists = lists;
        this.problems = problems;
    }

    /** The topic a file is about, by its name. */
    static String topicOf(String fileName) {
        return fileName.substring(fileName.lastIndexOf('/') + 1, fileName.length() - ".md".length());
    }

    Optional<Explainer> read(SourceFile file, String language) {
        String[] lines = file.text().split("\n", -1);
        int close = closingFence(lines);
        if (close < 0) {
            problems.error(file.at(1), "the article does not start with its particulars",
                    "start with a line ---, then topic: and the others, then a line ---");
            return Optional.empty();
        }
        // Both halves keep the line numbers of the whole.
        String head = "\n" + String.join("\n", List.of(lines).subList(1, close)) + "\n";
        String body = "\n".repeat(close + 1) + String.join("\n", List.of(lines).subList(close + 1, lines.length));
        int before = problems.count();
        Optional<YamlNode> top = YamlFile.read(new SourceFile(file.name(), head), problems);
        if (top.isEmpty() && problems.count() == before) {
            problems.error(file.at(1), "the article has no particulars", "add topic:, title:, summary: and stop:");
        }
        String topic = topicOf(file.name());
        List<Block> blocks = new MarkdownReader(file, ids, problems).read(body, ids.knows(Kind.FEATURE, topic));
        if (blocks.isEmpty()) {
            problems.error(file.at(close + 1), "the article has no text", "write it below the second row of hyphens");
        }
        return top.flatMap(node -> explainer(node, language, topic, blocks, before));
    }

    private static int closingFence(String[] lines) {
        if (!lines[0].strip().equals(FENCE)) {
            return -1;
        }
        for (int i = 1; i < lines.length; i++) {
            if (lines[i].strip().equals(FENCE)) {
                return i;
            }
        }
        return -1;
    }

    private Optional<Explainer> explainer(
            YamlNode top, String language, String topic, List<Block> blocks, int before) {
        YamlMap map = top.map("topic", "title", "summary", "stop", "related", "quiz", "cautions");
        String named = map.text("topic");
        if (!named.isEmpty() && !named.equals(topic)) {
            problems.error(map.placeOf("topic"), "the topic [" + named + "] is not the name of the file",
                    "rename the file or write " + topic);
        }
        String title = map.text("title");
        String summary = map.text("summary");
        Stop stop = map.choice("stop", Stop.values(), Stop::id);
        List<TopicId> related = lists.ids(map.list("related"), Kind.TOPIC).stream()
                .map(TopicId::new)
                .toList();
        if (related.contains(new TopicId(topic))) {
            problems.error(map.placeOf("related"), "the article is related to itself", "delete [" + topic + "]");
        }
        Optional<QuestionId> quiz = map.find("quiz")
                .filter(node -> ids.require(node.text(), node.place(), Kind.QUIZ))
                .map(node -> new QuestionId(node.text()));
        List<String> cautions = lists.ids(map.list("cautions"), Kind.CAUTION);
        return problems.make(map.place(), before, () -> new Explainer(
                new TopicId(topic), language, title, summary, stop, related, quiz, cautions, blocks));
    }
}
