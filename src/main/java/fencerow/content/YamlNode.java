package fencerow.content;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import fencerow.wording.Quantities;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import org.snakeyaml.engine.v2.exceptions.Mark;
import org.snakeyaml.engine.v2.nodes.MappingNode;
import org.snakeyaml.engine.v2.nodes.Node;
import org.snakeyaml.engine.v2.nodes.NodeTuple;
import org.snakeyaml.engine.v2.nodes.ScalarNode;
import org.snakeyaml.engine.v2.nodes.SequenceNode;

/**
 * One value in a YAML file. Every accessor reports what it cannot read and gives a stand-in, so that a reader goes on
 * and finds all problems; see {@link Problems#make}.
 */
final class YamlNode {
    /** Files are written with US separators; units of either kind are read. */
    private static final Quantities UNITS = new Quantities(Locale.US, false);
    private static final int MOST_PIECES = 999;

    private final Node node;
    private final SourceFile file;
    private final Problems problems;

    YamlNode(Node node, SourceFile file, Problems problems) {
        this.node = node;
        this.file = file;
        this.problems = problems;
    }

    /** A key of a map, where it is written, and its value. */
    record Entry(String key, Place place, YamlNode value) {}

    /** Where it is written. */
    Place place() {
        return place(node);
    }

    private Place place(Node of) {
        return file.at(of.getStartMark().map(Mark::getLine).orElse(0) + 1);
    }

    Problems problems() {
        return problems;
    }

    boolean isScalar() {
        return node instanceof ScalarNode;
    }

    boolean isList() {
        return node instanceof SequenceNode;
    }

    boolean isMap() {
        return node instanceof MappingNode;
    }

    /** A key without a value. */
    boolean isNothing() {
        return node instanceof ScalarNode scalar && scalar.isPlain()
                && Set.of("", "~", "null").contains(scalar.getValue());
    }

    void error(String what, String whatToDo) {
        problems.error(place(), what, whatToDo);
    }

    void warning(String what, String whatToDo) {
        problems.warning(place(), what, whatToDo);
    }

    /** Text, a number or a word. */
    String text() {
        if (isNothing()) {
            error("nothing is written here", "write a value");
            return "";
        }
        if (node instanceof ScalarNode scalar) {
            return scalar.getValue().strip();
        }
        error("a single value belongs here", "write one word, number or text");
        return "";
    }

    /** A whole number between two bounds. */
    int whole(int least, int most) {
        String text = text();
        try {
            int number = Integer.parseInt(text);
            if (number >= least && number <= most) {
                return number;
            }
            error("[" + text + "] is out of range", "write a whole number from " + least + " to " + most);
        } catch (NumberFormatException e) {
            error("[" + text + "] is no whole number", "write one from " + least + " to " + most);
        }
        return least;
    }

    /** A decimal number between two bounds. */
    double number(double least, double most) {
        String text = text();
        try {
            double number = Double.parseDouble(text);
            if (number >= least && number <= most) {
                return number;
            }
            error("[" + text + "] is out of range", "write a number from " + least + " to " + most);
        } catch (NumberFormatException e) {
            error("[" + text + "] is no number", "write one from " + least + " to " + most);
        }
        return least;
    }

    /** Yes or no. */
    boolean flag() {
        String text = text();
        if (Set.of("yes", "true").contains(text)) {
            return true;
        }
        if (!Set.of("no", "false").contains(text)) {
            error("[" + text + "] is neither yes nor no", "write true or false");
        }
        return false;
    }

    /** A number with its unit; a plain whole number for counts. */
    Amount amount(Dimension dimension) {
        if (dimension == Dimension.COUNT) {
            return Amount.count(whole(-MOST_PIECES, MOST_PIECES));
        }
        String text = text();
        try {
            return UNITS.parse(text, dimension);
        } catch (IllegalArgumentException e) {
            problems.error(place(), e);
            return new Amount(dimension, 0);
        }
    }

    /** One of some words. */
    <E> E choice(E[] values, Function<E, String> word) {
        String text = text();
        List<String> words = new ArrayList<>();
        for (E value : values) {
            words.add(word.apply(value));
            if (word.apply(value).equals(text)) {
                return value;
            }
        }
        error("[" + text + "] is none of the words that can stand here", "use one of " + String.join(", ", words));
        return values[0];
    }

    /** The entries of a list. */
    List<YamlNode> list() {
        if (node instanceof SequenceNode sequence) {
            return sequence.getValue().stream().map(each -> new YamlNode(each, file, problems)).toList();
        }
        error("a list belongs here", "write [a, b] or lines that start with a hyphen");
        return List.of();
    }

    /** The entries of a map whose keys are ids or words of their own, in the order written. */
    List<Entry> entries() {
        Map<String, Entry> entries = new LinkedHashMap<>();
        if (!(node instanceof MappingNode mapping)) {
            error("keys with values belong here", "write key: value");
            return List.of();
        }
        for (NodeTuple tuple : mapping.getValue()) {
            Place at = place(tuple.getKeyNode());
            if (!(tuple.getKeyNode() instanceof ScalarNode key)) {
                problems.error(at, "a key is no word", "write key: value");
                continue;
            }
            var entry = new Entry(key.getValue(), at, new YamlNode(tuple.getValueNode(), file, problems));
            Optional<Entry> first = Optional.ofNullable(entries.putIfAbsent(entry.key(), entry));
            first.ifPresent(other -> problems.error(at, "the key [" + entry.key() + "] is already there at "
                    + other.place(), "rename or delete one of them"));
        }
        return List.copyOf(entries.values());
    }

    /** A map that may have these keys and no others. */
    YamlMap map(String... allowed) {
        Map<String, YamlNode> values = new LinkedHashMap<>();
        Set<String> meant = new HashSet<>();
        List<String> known = List.of(allowed);
        for (Entry entry : entries()) {
            if (known.contains(entry.key())) {
                values.put(entry.key(), entry.value());
            } else {
                problems.error(entry.place(), "the key [" + entry.key() + "] is not known here",
                        Nearest.advice(entry.key(), known, "use one of " + String.join(", ", known)));
                Nearest.of(entry.key(), known).ifPresent(meant::add);
            }
        }
        return new YamlMap(place(), values, meant, problems);
    }
}
