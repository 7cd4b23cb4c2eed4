package fencerow.content;

import fencerow.needs.Rule;
import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Reads what answers ask of a machine: the lists under {@code must} and {@code wish}. */
final class RuleReader {
    private static final int MOST_WEIGHT = 5;

    private final EffectReader effects;

    RuleReader(EffectReader effects) {
        this.effects = effects;
    }

    /**
     * The must-haves and wishes of a question or an option.
     *
     * @param answered what the question's answer measures, where it is an amount
     */
    List<Rule> rules(YamlMap map, Optional<Dimension> answered) {
        List<Rule> rules = new ArrayList<>();
        map.list("must").forEach(node -> rule(node, true, answered).ifPresent(rules::add));
        map.list("wish").forEach(node -> rule(node, false, answered).ifPresent(rules::add));
        return rules;
    }

    private Optional<Rule> rule(YamlNode node, boolean must, Optional<Dimension> answered) {
        if (node.isScalar()) {
            return effects.capabilities().read(node).filter(of -> effects.isCount(of, node)).map(of -> new Rule(
                    of, Relation.AT_LEAST, new Rule.Level.Fixed(Amount.count(1)), Demand.ANY_STATE, must, 1));
        }
        YamlMap map = node.map("of", "at-least", "at-most", "less", "plus", "in", "weight");
        Optional<CapabilityId> of = map.need("of").flatMap(effects.capabilities()::read);
        Optional<Relation> relation = EffectReader.relation(map);
        StateId state = effects.state(map, Demand.ANY_STATE);
        int weight = map.findWhole("weight", 1, MOST_WEIGHT).orElse(1);
        if (must && map.has("weight")) {
            node.problems().error(map.placeOf("weight"), "a must-have has no weight", "delete it, or make this a wish");
        }
        if (of.isEmpty() || relation.isEmpty()) {
            return Optional.empty();
        }
        return level(map, of.get(), relation.get(), answered)
                .map(level -> new Rule(of.get(), relation.get(), level, state, must, weight));
    }

    private Optional<Rule.Level> level(YamlMap map, CapabilityId of, Relation relation, Optional<Dimension> answered) {
        YamlNode node = map.find(relation.id()).orElseThrow();
        Dimension dimension = effects.capabilities().dimension(of);
        String word = node.isScalar() ? node.text() : "";
        if (word.equals("answer")) {
            return measures(node, of, dimension, answered)
                    ? Optional.of(new Rule.Level.Answered(margin(map, dimension)))
                    : Optional.empty();
        }
        if (map.has("less") || map.has("plus")) {
            map.problems().error(map.placeOf(map.has("less") ? "less" : "plus"),
                    "a margin goes only with the shopper's answer", "delete it, or write answer as the amount");
        }
        if (word.equals("counterweight") || word.equals("payload")) {
            boolean fits = measures(node, of, dimension, Optional.of(Dimension.MASS))
                    && measures(node, of, Dimension.MASS, answered);
            Rule.Level level = word.equals("payload") ? new Rule.Level.Payload() : new Rule.Level.Counterweight();
            return fits ? Optional.of(level) : Optional.empty();
        }
        if (word.equals("mowing-width")) {
            return measures(node, of, dimension, Optional.of(Dimension.LENGTH))
                    ? Optional.of(new Rule.Level.MowingWidth())
                    : Optional.empty();
        }
        return Optional.of(new Rule.Level.Fixed(node.amount(dimension)));
    }

    private static boolean measures(YamlNode node, CapabilityId of, Dimension wanted, Optional<Dimension> given) {
        if (given.isEmpty()) {
            node.error("[" + node.text() + "] has no amount to go by", "ask for an amount, or write one here");
            return false;
        }
        if (given.get() != wanted) {
            node.error("[" + of + "] and [" + node.text() + "] do not measure the same: " + wanted + " and "
                    + given.get(), "ask for a capability that does");
            return false;
        }
        return true;
    }

    private static Amount margin(YamlMap map, Dimension dimension) {
        if (map.has("less")) {
            return new Amount(dimension, -map.amount("less", dimension).si());
        }
        return map.has("plus") ? map.amount("plus", dimension) : new Amount(dimension, 0);
    }
}
