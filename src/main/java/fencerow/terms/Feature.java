package fencerow.terms;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * A piece of equipment a tractor may or may not have.
 *
 * @param id        its id; also the capability it provides
 * @param stop      where on a walk around the tractor it is looked for
 * @param core      whether it is one of the topics every shopper should meet
 * @param kinds     the kinds it comes in; empty for a plain yes or no
 * @param most      how many there can be, 1 for most features
 * @param offering  how it is offered on each machine class; all five
 * @param gives     what it does beyond its own capability
 * @param kindGives what one kind does beyond that
 * @param hurts     whether having it can stand in the way of work, so that not knowing is not simply worst when absent
 */
public record Feature(
        FeatureId id,
        Stop stop,
        boolean core,
        List<String> kinds,
        int most,
        Map<MachineClass, Offering> offering,
        List<Effect> gives,
        Map<String, List<Effect>> kindGives,
        boolean hurts) {
    /** @throws IllegalArgumentException if a class has no offering or effects are given for an unknown kind */
    public Feature {
        kinds = List.copyOf(kinds);
        offering = Map.copyOf(offering);
        gives = List.copyOf(gives);
        kindGives = Map.copyOf(kindGives);
        for (MachineClass machineClass : MachineClass.values()) {
            if (!offering.containsKey(machineClass)) {
                throw new IllegalArgumentException(
                        "feature [" + id + "] has no offering for class [" + machineClass.id() + "]; add one");
            }
        }
        for (String kind : kindGives.keySet()) {
            if (!kinds.contains(kind)) {
                throw new IllegalArgumentException(
                        "feature [" + id + "] gives effects for kind [" + kind + "], which is not one of " + kinds);
            }
        }
        if (most < 1) {
            throw new IllegalArgumentException("feature [" + id + "] can be there " + most + " times; use 1 or more");
        }
    }

    /** How it is offered on the class. */
    public Offering offeringOn(MachineClass machineClass) {
        return offering.getOrDefault(machineClass, Offering.VARIES);
    }

    /** Everything that one fitted piece (of the kind, where there are kinds) does. */
    public List<Effect> effects(Optional<String> kind) {
        var all = new ArrayList<Effect>();
        all.add(Effect.one(CapabilityId.of(id)));
        kind.ifPresent(k -> all.add(Effect.one(CapabilityId.of(id, k))));
        all.addAll(gives);
        kind.ifPresent(k -> all.addAll(kindGives.getOrDefault(k, List.of())));
        return all;
    }
}
