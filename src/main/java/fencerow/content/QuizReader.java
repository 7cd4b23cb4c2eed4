package fencerow.content;

import fencerow.quiz.QuizQuestion;
import fencerow.terms.FeatureId;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Reads the files {@code quiz*.yaml}. */
final class QuizReader {
    private final Ids ids;
    private final IdLists lists;

    QuizReader(Ids ids, IdLists lists) {
        this.ids = ids;
        this.lists = lists;
    }

    /** Declares the questions of one file, so that explainers can name them. */
    void declare(YamlNode top) {
        for (YamlNode node : top.list()) {
            if (node.isMap()) {
                node.entries().stream().filter(entry -> entry.key().equals("id")).forEach(entry ->
                        ids.declare(Kind.QUIZ, entry.value().text(), entry.value().place()));
            }
        }
    }

    /** Reads one file. */
    List<QuizQuestion> read(YamlNode top) {
        List<QuizQuestion> all = new ArrayList<>();
        for (YamlNode node : top.list()) {
            int before = node.problems().count();
            YamlMap map = node.map("id", "kind", "feature", "topic", "options", "key", "wrong");
            String id = map.text("id");
            QuizQuestion.Kind kind = map.choice("kind", QuizQuestion.Kind.values(),
                    k -> k.name().toLowerCase(Locale.ROOT));
            Optional<FeatureId> feature = map.find("feature")
                    .filter(named -> ids.require(named.text(), named.place(), Kind.FEATURE))
                    .map(named -> new FeatureId(named.text()));
            Optional<TopicId> topic = lists.topic(map, "topic").or(() -> feature.map(f -> new TopicId(f.value())));
            if (!map.has("feature") && !map.has("topic")) {
                node.error("the question names neither a feature nor a topic", "add feature: or topic:");
            }
            List<OptionId> options = kind == QuizQuestion.Kind.BELIEF ? beliefScale(map, id, feature) : options(map);
            Optional<OptionId> key = map.need("key").flatMap(QuizReader::option);
            key.filter(k -> !options.contains(k) && !options.isEmpty()).ifPresent(k -> map.problems().error(
                    map.placeOf("key"), "the key [" + k + "] is none of the options",
                    "use one of " + String.join(", ", options.stream().map(OptionId::value).toList())));
            double wrong = map.number("wrong", 0.01, 0.99);
            if (topic.isPresent() && key.isPresent()) {
                node.problems()
                        .make(map.place(), before, () -> new QuizQuestion(
                                new QuestionId(id), kind, feature, topic.get(), options, key.get(), wrong))
                        .ifPresent(all::add);
            }
        }
        return all;
    }

    private static List<OptionId> beliefScale(YamlMap map, String id, Optional<FeatureId> feature) {
        if (map.has("options")) {
            map.problems().error(map.placeOf("options"), "a belief has always the same options", "delete them here");
        }
        if (feature.isPresent() && !feature.get().value().equals(id)) {
            map.problems().error(map.placeOf("feature"), "a belief [" + id + "] is about another feature",
                    "give the question the id of its feature");
        }
        return QuizQuestion.BELIEF_SCALE;
    }

    private static List<OptionId> options(YamlMap map) {
        List<OptionId> options = new ArrayList<>();
        for (YamlNode node : map.need("options").map(YamlNode::list).orElse(List.of())) {
            option(node).ifPresent(option -> {
                if (options.contains(option)) {
                    node.error("the option [" + option + "] stands here twice", "rename or delete one of them");
                }
                options.add(option);
            });
        }
        return options;
    }

    private static Optional<OptionId> option(YamlNode node) {
        String text = node.text();
        if (text.equals(QuestionReader.NOT_SURE)) {
            node.error("[" + text + "] is always offered", "choose another option");
            return Optional.empty();
        }
        return node.problems().make(node.place(), node.problems().count(), () -> new OptionId(text));
    }
}
