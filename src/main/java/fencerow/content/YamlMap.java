package fencerow.content;

import fencerow.terms.Amount;
import fencerow.terms.Dimension;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.Set;
import java.util.function.Function;

/** A YAML map with known keys. Accessors without {@code find} report a missing key and give a stand-in. */
final class YamlMap {
    private final Place place;
    private final Map<String, YamlNode> values;
    private final Set<String> meant;
    private final Problems problems;

    /** Takes the values, and the keys that were probably meant by misspelt ones. */
    YamlMap(Place place, Map<String, YamlNode> values, Set<String> meant, Problems problems) {
        this.place = place;
        this.values = values;
        this.meant = meant;
        this.problems = problems;
    }

    Place place() {
        return place;
    }

    Problems problems() {
        return problems;
    }

    boolean has(String key) {
        return values.containsKey(key);
    }

    /** Whether the key is neither there nor there misspelt. */
    boolean lacks(String key) {
        return !has(key) && !meant.contains(key);
    }

    Optional<YamlNode> find(String key) {
        return Optional.ofNullable(values.get(key));
    }

    /** Where the key's value is written, or the map where there is none. */
    Place placeOf(String key) {
        return find(key).map(YamlNode::place).orElse(place);
    }

    /** The value of a key that must be there; reported if it is not. */
    Optional<YamlNode> need(String key) {
        if (lacks(key)) {
            problems.error(place, "[" + key + "] is missing", "add " + key + ": ...");
        }
        return find(key);
    }

    String text(String key) {
        return need(key).map(YamlNode::text).orElse("");
    }

    Optional<String> findText(String key) {
        return find(key).map(YamlNode::text);
    }

    int whole(String key, int least, int most) {
        return need(key).map(node -> node.whole(least, most)).orElse(least);
    }

    OptionalInt findWhole(String key, int least, int most) {
        return find(key).map(node -> OptionalInt.of(node.whole(least, most))).orElse(OptionalInt.empty());
    }

    double number(String key, double least, double most) {
        return need(key).map(node -> node.number(least, most)).orElse(least);
    }

    /** No where the key is not there. */
    boolean flag(String key) {
        return find(key).map(YamlNode::flag).orElse(false);
    }

    Amount amount(String key, Dimension dimension) {
        return need(key).map(node -> node.amount(dimension)).orElse(new Amount(dimension, 0));
    }

    <E> E choice(String key, E[] choices, Function<E, String> word) {
        return need(key).map(node -> node.choice(choices, word)).orElse(choices[0]);
    }

    /** Empty where the key is not there. */
    List<YamlNode> list(String key) {
        return find(key).map(YamlNode::list).orElse(List.of());
    }

    /** A map of its own under the key, which must be there. */
    YamlMap map(String key, String... allowed) {
        return need(key)
                .map(node -> node.map(allowed))
                .orElse(new YamlMap(place, Map.of(), Set.of(allowed), problems));
    }

    /** The entries of a map under the key; none where the key is not there. */
    List<YamlNode.Entry> entries(String key) {
        return find(key).map(YamlNode::entries).orElse(List.of());
    }
}
