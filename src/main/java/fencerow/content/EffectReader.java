package fencerow.content;

import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.Demand;
import fencerow.terms.Dimension;
import fencerow.terms.Effect;
import fencerow.terms.Relation;
import fencerow.terms.StateId;
import fencerow.terms.Threshold;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Reads what things give and need. */
final class EffectReader {
    /** What keeps the front wheels loaded with the attachment raised; worked out per machine. */
    private static final String STEERING_WEIGHT = "steering-weight";

    private final Ids ids;
    private final Capabilities capabilities;

    EffectReader(Ids ids, Capabilities capabilities) {
        this.ids = ids;
        this.capabilities = capabilities;
    }

    Capabilities capabilities() {
        return capabilities;
    }

    /** A list of {@code name} or {@code {of, amount, in}}. */
    List<Effect> effects(List<YamlNode> nodes) {
        List<Effect> effects = new ArrayList<>();
        for (YamlNode node : nodes) {
            if (node.isScalar()) {
                capabilities.read(node).filter(of -> isCount(of, node)).ifPresent(of -> effects.add(Effect.one(of)));
            } else {
                YamlMap map = node.map("of", "amount", "in");
                Optional<CapabilityId> of = map.need("of").flatMap(capabilities::read);
                of.ifPresent(known -> effects.add(
                        new Effect(known, map.amount("amount", capabilities.dimension(known)), states(map))));
            }
        }
        return effects;
    }

    /** A list of {@code name}, {@code {of, at-least}} or {@code {of, at-most}}; {@code own} where no state is named. */
    List<Demand> demands(List<YamlNode> nodes, StateId own) {
        return demands(nodes, own, Optional.empty());
    }

    /** The same of something that has a mass: it may ask for {@code steering-weight}. */
    List<Demand> demands(List<YamlNode> nodes, StateId own, Optional<Amount> mass) {
        List<Demand> demands = new ArrayList<>();
        for (YamlNode node : nodes) {
            if (node.isScalar()) {
                capabilities.read(node).filter(of -> isCount(of, node)).ifPresent(of -> demands.add(
                        new Demand(of, Relation.AT_LEAST, Threshold.of(Amount.count(1)), own)));
            } else {
                YamlMap map = node.map("of", "at-least", "at-most", "in");
                Optional<CapabilityId> of = map.need("of").flatMap(capabilities::read);
                Optional<Relation> relation = relation(map);
                if (of.isPresent() && relation.isPresent()) {
                    Threshold threshold = threshold(map, of.get(), relation.get(), mass);
                    demands.add(new Demand(of.get(), relation.get(), threshold, state(map, own)));
                }
            }
        }
        return demands;
    }

    private Threshold threshold(YamlMap map, CapabilityId of, Relation relation, Optional<Amount> mass) {
        YamlNode node = problems(map, relation);
        Dimension dimension = capabilities.dimension(of);
        if (mass.isPresent() && node.isScalar() && node.text().equals(STEERING_WEIGHT)) {
            if (dimension != Dimension.MASS) {
                node.error("[" + of + "] is no mass, and [" + STEERING_WEIGHT + "] is one",
                        "ask for a capability that is");
            }
            return new Threshold.SteeringWeight(mass.get());
        }
        Amount amount = map.amount(relation.id(), dimension);
        if (amount.si() < 0) {
            node.error("less than nothing is asked for", "write 0 or more");
        }
        return Threshold.of(amount);
    }

    private static YamlNode problems(YamlMap map, Relation relation) {
        return map.find(relation.id()).orElseThrow();
    }

    /** Which side of its threshold a demand names; exactly one. */
    static Optional<Relation> relation(YamlMap map) {
        if (map.has("at-least") == map.has("at-most")) {
            map.problems().error(map.place(), "a demand needs either at-least or at-most", "write one of the two");
            return Optional.empty();
        }
        return Optional.of(map.has("at-least") ? Relation.AT_LEAST : Relation.AT_MOST);
    }

    /** Whether a bare name will do: only for what is counted. */
    boolean isCount(CapabilityId of, YamlNode node) {
        Dimension dimension = capabilities.dimension(of);
        if (dimension != Dimension.COUNT) {
            node.error("[" + of + "] is a " + dimension.name() + " and needs an amount",
                    "write {of: " + of + ", ...: number and unit}");
            return false;
        }
        return true;
    }

    /** The one state under {@code in}. */
    StateId state(YamlMap map, StateId otherwise) {
        return map.find("in").flatMap(this::state).orElse(otherwise);
    }

    private Set<StateId> states(YamlMap map) {
        Set<StateId> states = new HashSet<>();
        map.list("in").forEach(node -> state(node).ifPresent(states::add));
        return states;
    }

    /** A working state that exists. */
    Optional<StateId> state(YamlNode node) {
        String id = node.text();
        return ids.require(id, node.place(), Kind.STATE) ? Optional.of(new StateId(id)) : Optional.empty();
    }
}
