package fencerow.content;

import fencerow.explainers.Block;
import fencerow.explainers.Explainer;
import fencerow.terms.QuestionId;
import fencerow.terms.Stop;
import fencerow.terms.TopicId;
import java.util.List;
import java.util.Optional;

/** Reads one article: particulars in YAML, then CommonMark. Its file has the name of its topic. */
final class ExplainerReader {
    private final Ids ids;
    private final IdLists lists;
    private final Problems problems;

    ExplainerReader(Ids ids, IdLists lists, Problems problems) {
        this.ids = ids;
        this.lists = lists;
        this.problems = problems;
    }

    Optional<Explainer> read(Article article, String language) {
        SourceFile file = article.file();
        int before = problems.count();
        Optional<YamlNode> top = YamlFile.read(new SourceFile(file.name(), article.head()), problems);
        if (top.isEmpty() && problems.count() == before) {
            problems.error(file.at(1), "the article has no particulars", "add topic:, title:, summary: and stop:");
        }
        String topic = Article.topicOf(file.name());
        List<Block> blocks =
                new MarkdownReader(file, ids, problems).read(article.body(), ids.knows(Kind.FEATURE, topic));
        if (blocks.isEmpty()) {
            problems.error(file.at(article.start()), "the article has no text",
                    "write it below the second row of hyphens");
        }
        return top.flatMap(node -> explainer(node, language, topic, blocks, before));
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
