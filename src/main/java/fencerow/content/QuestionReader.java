package fencerow.content;

import fencerow.needs.Question;
import fencerow.needs.Rule;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.ItemId;
import fencerow.terms.JobId;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;

/** Reads {@code questions.yaml}. */
final class QuestionReader {
    /** May not be an option: the screen always offers it. */
    static final String NOT_SURE = "not-sure";

    private static final int MOST_SHARE = 100;

    private final Ids ids;
    private final IdLists lists;
    private final RuleReader rules;

    QuestionReader(Ids ids, IdLists lists, RuleReader rules) {
        this.ids = ids;
        this.lists = lists;
        this.rules = rules;
    }

    /** How a question is answered, as written. */
    private enum Asked {
        ONE, SEVERAL, JOBS, AMOUNT, MONEY;

        Question.Choose choose() {
            return this == MONEY ? Question.Choose.AMOUNT : Question.Choose.valueOf(name());
        }

        boolean hasScale() {
            return this == AMOUNT || this == MONEY;
        }

        String word() {
            return name().toLowerCase(Locale.ROOT);
        }
    }

    /** Declares questions and their options, so that any question can ask about any other. */
    void declare(YamlNode top) {
        for (YamlNode node : top.list()) {
            Map<String, YamlNode> fields = fields(node);
            Optional<YamlNode> id = Optional.ofNullable(fields.get("id"));
            if (id.isPresent() && ids.declare(Kind.QUESTION, id.get().text(), id.get().place())) {
                Optional.ofNullable(fields.get("options")).filter(YamlNode::isList).ifPresent(options ->
                        options.list().forEach(option -> Optional.ofNullable(fields(option).get("id")).ifPresent(
                                own -> declareOption(id.get().text(), own))));
                if (fields.containsKey("choose") && fields.get("choose").text().equals("jobs")) {
                    ids.all(Kind.JOB).forEach(job ->
                            ids.declare(Kind.OPTION, id.get().text() + "/" + job, ids.placeOf(Kind.JOB, job)));
                }
            }
        }
    }

    private void declareOption(String question, YamlNode option) {
        if (option.text().equals(NOT_SURE)) {
            option.error("[" + NOT_SURE + "] is always offered", "delete this option");
        } else {
            ids.declare(Kind.OPTION, question + "/" + option.text(), option.place());
        }
    }

    private static Map<String, YamlNode> fields(YamlNode node) {
        Map<String, YamlNode> fields = new LinkedHashMap<>();
        if (node.isMap()) {
            node.entries().forEach(entry -> fields.put(entry.key(), entry.value()));
        }
        return fields;
    }

    /** Reads all of them, in asking order. */
    List<Question> read(YamlNode top) {
        List<Question> all = new ArrayList<>();
        for (YamlNode node : top.list()) {
            question(node).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Question> question(YamlNode node) {
        int before = node.problems().count();
        YamlMap map = node.map("id", "choose", "when", "options", "dimension", "from", "to", "step", "typical", "must",
                "wish");
        String id = map.text("id");
        int beforeChoose = node.problems().count();
        Asked asked = map.choice("choose", Asked.values(), Asked::word);
        if (node.problems().count() > beforeChoose) {
            return Optional.empty(); // nothing else can be judged
        }
        Map<QuestionId, List<OptionId>> when = when(map);
        if (!asked.hasScale()) {
            List.of("dimension", "from", "to", "step", "typical").forEach(key -> refuse(map, key));
            List<Question.Option> options = options(map, asked);
            List<Rule> own = rules.rules(map, Optional.empty());
            return node.problems().make(map.place(), before, () ->
                    new Question(new QuestionId(id), asked.choose(), when, options, Optional.empty(), own));
        }
        refuse(map, "options");
        Optional<Dimension> dimension = dimension(map, asked);
        Optional<Question.Scale> scale = dimension.flatMap(measured -> scale(map, measured));
        List<Rule> own = dimension.isEmpty() ? List.of() : rules.rules(map, dimension);
        return node.problems().make(map.place(), before, () ->
                new Question(new QuestionId(id), asked.choose(), when, List.of(), scale, own));
    }

    private static Optional<Dimension> dimension(YamlMap map, Asked asked) {
        if (asked == Asked.MONEY) {
            refuse(map, "dimension");
            return Optional.of(Dimension.MONEY);
        }
        int before = map.problems().count();
        Dimension dimension = map.choice("dimension", Dimension.values(), Dimension::id);
        return map.problems().count() > before ? Optional.empty() : Optional.of(dimension);
    }

    private static void refuse(YamlMap map, String key) {
        if (map.has(key)) {
            map.problems().error(map.placeOf(key), "[" + key + "] does not go with this way of choosing",
                    "delete it, or change choose");
        }
    }

    private Map<QuestionId, List<OptionId>> when(YamlMap map) {
        Map<QuestionId, List<OptionId>> when = new LinkedHashMap<>();
        for (YamlNode.Entry entry : map.entries("when")) {
            if (ids.require(entry.key(), entry.place(), Kind.QUESTION)) {
                List<OptionId> options = new ArrayList<>();
                for (YamlNode option : entry.value().list()) {
                    if (ids.require(entry.key() + "/" + option.text(), option.place(), Kind.OPTION)) {
                        options.add(new OptionId(option.text()));
                    }
                }
                when.put(new QuestionId(entry.key()), options);
            }
        }
        return when;
    }

    private List<Question.Option> options(YamlMap map, Asked asked) {
        List<Question.Option> options = new ArrayList<>();
        if (asked == Asked.JOBS) {
            refuse(map, "options");
            ids.all(Kind.JOB).forEach(job ->
                    options.add(new Question.Option(new OptionId(job), 1, List.of(), List.of(), List.of())));
            return options;
        }
        for (YamlNode node : map.need("options").map(YamlNode::list).orElse(List.of())) {
            option(node).ifPresent(options::add);
        }
        if (map.has("options") && map.list("options").size() < 2) {
            map.problems().error(map.placeOf("options"), "there are fewer than two options", "give at least two");
        }
        return options;
    }

    private Optional<Question.Option> option(YamlNode node) {
        int before = node.problems().count();
        YamlMap map = node.map("id", "share", "must", "wish", "owns", "hires", "drops", "about");
        String id = map.text("id");
        int share = map.findWhole("share", 0, MOST_SHARE).orElse(1);
        List<Rule> asks = rules.rules(map, Optional.empty());
        List<ItemId> owns = lists.attachments(map.list("owns"));
        List<JobId> hires = new ArrayList<>(lists.jobs(map.list("hires")));
        hires.addAll(lists.jobs(map.list("drops")));
        Optional<TopicId> about = map.findText("about")
                .filter(topic -> ids.require(topic, map.placeOf("about"), Kind.TOPIC))
                .map(TopicId::new);
        return node.problems().make(map.place(), before, () ->
                new Question.Option(new OptionId(id), share, asks, owns, hires, about));
    }

    private static Optional<Question.Scale> scale(YamlMap map, Dimension dimension) {
        int before = map.problems().count();
        Amount from = map.amount("from", dimension);
        Amount to = map.amount("to", dimension);
        Amount step = map.amount("step", dimension);
        List<Question.Typical> typical = new ArrayList<>();
        for (YamlNode node : map.list("typical")) {
            YamlMap each = node.map("value", "share");
            typical.add(new Question.Typical(each.amount("value", dimension), each.whole("share", 1, MOST_SHARE)));
        }
        if (typical.isEmpty()) {
            map.problems().error(map.placeOf("typical"), "no typical answer is given",
                    "add typical: [{value: ..., share: 1}]");
        }
        return map.problems().make(map.placeOf("from"), before, () ->
                new Question.Scale(dimension, from, to, step, typical));
    }
}
