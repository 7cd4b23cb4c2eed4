package fencerow.match;

import fencerow.terms.Amount;
import fencerow.terms.CapabilityId;
import fencerow.terms.ItemId;
import fencerow.terms.StateId;
import java.util.Optional;

/**
 * The true cause why something that could meet a must-have cannot on this unit.
 *
 * @param item      the add-on or attachment that could have met it; empty where nothing on sale could
 * @param of        the capability that is short in the end
 * @param rule      what stands in the way
 * @param wanted    how much of it is needed, where that is a number
 * @param available how much the unit has or can ever have, where that is a number
 * @param in        the working state it is short in; empty where what is mounted makes no difference
 */
public record Blocked(
        Optional<ItemId> item,
        CapabilityId of,
        Rule rule,
        Optional<Amount> wanted,
        Optional<Amount> available,
        Optional<StateId> in) {
    /** Whatever is mounted. */
    public Blocked(
            Optional<ItemId> item, CapabilityId of, Rule rule, Optional<Amount> wanted, Optional<Amount> available) {
        this(item, of, rule, wanted, available, Optional.empty());
    }

    /** What stands in the way of an item. */
    public enum Rule {
        /** No model of this kind ever takes it. */
        NEVER_ON_MODEL("never-on-model"),
        /** Only the factory puts it on, when the tractor is ordered. */
        FACTORY_ONLY("factory-only"),
        /** It is part of the tractor as built; nothing on sale adds it. */
        CANNOT_BE_ADDED("cannot-be-added"),
        /** It is not made for this class of machine. */
        NOT_FOR_CLASS("not-for-class"),
        /** This showroom has no price for it. */
        NOT_SOLD_HERE("not-sold-here"),
        /** A stopgap for fewer hours a year than the shopper works. */
        TOO_MANY_HOURS("too-many-hours"),
        /** The machine gives too little of it. */
        TOO_LITTLE("too-little"),
        /** The machine is over the limit: too high, wide or heavy. */
        TOO_MUCH("too-much"),
        /** The machine has it, and must not. */
        IN_THE_WAY("in-the-way"),
        /** It can be had alone, but not together with the other must-haves. */
        NOT_TOGETHER("not-together");

        private final String id;

        Rule(String id) {
            this.id = id;
        }

        /** The word used in documents and text keys. */
        public String id() {
            return id;
        }
    }
}
