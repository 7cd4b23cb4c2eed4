package fencerow.stock;

import fencerow.terms.Demand;
import fencerow.terms.Effect;
import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import java.util.List;
import java.util.OptionalInt;
import java.util.Set;

/** Something that can be bought to make a tractor able to do work. */
public sealed interface Item permits AddOn, Attachment {
    /** Its id, unique over add-ons and attachments. */
    ItemId id();

    /** The classes it exists for. */
    Set<MachineClass> classes();

    /** How many of it one tractor can use. */
    int max();

    /** What each piece of it does. */
    List<Effect> gives();

    /** What must hold where it is there. */
    List<Demand> needs();

    /** Items that cannot be there together with it. */
    Set<ItemId> excludes();

    /** All effects of one piece: what it says it gives, and for an attachment itself and its jobs. */
    default List<Effect> allEffects() {
        return gives();
    }

    /** If it is a stopgap: the hours a year up to which it is sensible. */
    OptionalInt stopgapHours();
}
