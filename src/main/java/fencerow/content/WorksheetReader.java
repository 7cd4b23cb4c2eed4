package fencerow.content;

import fencerow.needs.Question;
import fencerow.sizing.catalogue.Calculation;
import fencerow.sizing.catalogue.Calculations;
import fencerow.sizing.catalogue.Measured;
import fencerow.sizing.catalogue.Output;
import fencerow.sizing.catalogue.Parameter;
import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.terms.Figure;
import fencerow.terms.OptionId;
import fencerow.terms.QuestionId;
import fencerow.terms.TopicId;
import fencerow.visit.Prefill;
import fencerow.visit.Worksheet;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** Reads {@code calculations.yaml}: which calculations are offered, what they start from and where they lead. */
final class WorksheetReader {
    private static final List<String> AXLES = List.of("front-axle-load", "rear-axle-load");

    private final Ids ids;
    private final IdLists lists;
    private final Map<String, Question> questions = new LinkedHashMap<>();

    WorksheetReader(Ids ids, IdLists lists, List<Question> questions) {
        this.ids = ids;
        this.lists = lists;
        questions.forEach(question -> this.questions.put(question.id().value(), question));
    }

    List<Worksheet> read(YamlNode top) {
        List<Worksheet> all = new ArrayList<>();
        for (YamlNode.Entry entry : top.entries()) {
            Optional<Calculation> calculation = Calculations.find(entry.key());
            if (calculation.isEmpty()) {
                top.problems().error(entry.place(), "there is no calculation [" + entry.key() + "]",
                        Nearest.advice(entry.key(), Calculations.all().stream().map(Calculation::id).toList(),
                                "delete it"));
            }
            calculation.flatMap(known -> sheet(known, entry.value())).ifPresent(all::add);
        }
        return all;
    }

    private Optional<Worksheet> sheet(Calculation calculation, YamlNode node) {
        int before = node.problems().count();
        YamlMap map = node.map("first", "answer", "curve", "loads", "axles", "topics", "from");
        List<String> inputs = calculation.parameters().stream().map(Parameter::id).toList();
        List<String> first = new ArrayList<>();
        for (YamlNode each : map.list("first")) {
            if (isOne(each, each.text(), inputs, "takes no")) {
                first.add(each.text());
            }
        }
        List<String> outputs = calculation.outputs().stream().map(Output::id).toList();
        Optional<String> answer = map.find("answer")
                .filter(each -> isOne(each, each.text(), outputs, "gives no"))
                .map(YamlNode::text)
                .or(() -> outputs.stream().findFirst());
        Optional<Worksheet.Picture> picture = picture(map, calculation, outputs);
        List<TopicId> topics = lists.ids(map.list("topics"), Kind.TOPIC).stream().map(TopicId::new).toList();
        Map<String, List<Prefill>> prefills = prefills(map, calculation);
        return node.problems().make(map.place(), before, () -> new Worksheet(
                calculation, first.isEmpty() ? inputs : first, answer, picture, topics, prefills));
    }

    private static boolean isOne(YamlNode node, String id, List<String> known, String verb) {
        if (known.contains(id)) {
            return true;
        }
        node.error("the calculation " + verb + " [" + id + "]",
                Nearest.advice(id, known, "use one of " + String.join(", ", known)));
        return false;
    }

    private static Optional<Worksheet.Picture> picture(
            YamlMap map, Calculation calculation, List<String> outputs) {
        if (map.flag("axles")) {
            if (!outputs.containsAll(AXLES)) {
                map.problems().error(map.placeOf("axles"), "the calculation gives no axle loads", "delete this");
            }
            return Optional.of(new Worksheet.Picture.AxleLoads());
        }
        List<String> numbers = calculation.parameters().stream()
                .filter(Measured.class::isInstance).map(Parameter::id).toList();
        return map.find("curve")
                .filter(node -> isOne(node, node.text(), numbers, "has no number"))
                .map(node -> new Worksheet.Picture.Curve(node.text(), map.flag("loads")));
    }

    private Map<String, List<Prefill>> prefills(YamlMap map, Calculation calculation) {
        Map<String, List<Prefill>> prefills = new LinkedHashMap<>();
        Map<String, Measured<?>> numbers = new LinkedHashMap<>();
        for (Parameter parameter : calculation.parameters()) {
            if (parameter instanceof Measured<?> measured) {
                numbers.put(measured.id(), measured);
            }
        }
        for (YamlNode.Entry entry : map.entries("from")) {
            Optional<Measured<?>> measured = Optional.ofNullable(numbers.get(entry.key()));
            if (measured.isEmpty()) {
                map.problems().error(entry.place(), "the calculation has no number [" + entry.key() + "]",
                        Nearest.advice(entry.key(), numbers.keySet(), "delete it"));
                continue;
            }
            List<YamlNode> nodes = entry.value().isList() ? entry.value().list() : List.of(entry.value());
            List<Prefill> all = new ArrayList<>();
            nodes.forEach(node -> prefill(node, measured.get().dimension()).ifPresent(all::add));
            prefills.put(entry.key(), all);
        }
        return prefills;
    }

    private Optional<Prefill> prefill(YamlNode node, Dimension dimension) {
        YamlMap map = node.map("figure", "plus", "answer", "options");
        if (map.has("figure") == map.has("answer")) {
            node.error("a number comes from a figure or from an answer", "write figure: ... or answer: ...");
            return Optional.empty();
        }
        return map.has("figure") ? fromFigure(map, dimension) : fromAnswer(map, dimension);
    }

    private static Optional<Prefill> fromFigure(YamlMap map, Dimension dimension) {
        int before = map.problems().count();
        Figure figure = map.choice("figure", Figure.values(), Figure::id);
        Amount plus = map.has("plus") ? map.amount("plus", dimension) : new Amount(dimension, 0);
        if (map.problems().count() > before) {
            return Optional.empty();
        }
        return measures(map, "figure", figure.dimension(), dimension)
                ? Optional.of(new Prefill.FromFigure(figure, plus))
                : Optional.empty();
    }

    private Optional<Prefill> fromAnswer(YamlMap map, Dimension dimension) {
        String id = map.text("answer");
        if (!ids.require(id, map.placeOf("answer"), Kind.QUESTION)) {
            return Optional.empty();
        }
        Map<OptionId, Amount> options = new LinkedHashMap<>();
        for (YamlNode.Entry entry : map.entries("options")) {
            if (ids.require(id + "/" + entry.key(), entry.place(), Kind.OPTION)) {
                options.put(new OptionId(entry.key()), entry.value().amount(dimension));
            }
        }
        Optional<Question.Scale> scale = Optional.ofNullable(questions.get(id)).flatMap(Question::scale);
        if (scale.isPresent() && !measures(map, "answer", scale.get().dimension(), dimension)) {
            return Optional.empty();
        }
        if (questions.containsKey(id) && scale.isEmpty() && options.isEmpty()) {
            map.problems().error(map.placeOf("answer"), "[" + id + "] asks for no amount",
                    "add options: {...} with the amount that each option comes to");
            return Optional.empty();
        }
        return Optional.of(new Prefill.FromAnswer(new QuestionId(id), options));
    }

    private static boolean measures(YamlMap map, String key, Dimension given, Dimension wanted) {
        if (given != wanted) {
            map.problems().error(map.placeOf(key), "this is a " + given.id() + ", the number a " + wanted.id(),
                    "take it from something that measures the same");
        }
        return given == wanted;
    }
}
