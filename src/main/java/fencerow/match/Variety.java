package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Availability;
import fencerow.stock.Condition;
import fencerow.stock.Item;
import fencerow.stock.Model;
import fencerow.stock.Unit;
import fencerow.terms.ItemId;
import java.util.List;
import java.util.Set;

/**
 * Units of one variety, that is of one model, condition, availability and bundle: what they start with and what can be
 * had for them, whoever asks. Immutable.
 */
final class Variety {
    private static final long NOT_TO_BE_HAD = -1;

    private final Unit like;
    private final long[] start;
    private final long[] cents;

    /** What makes units one variety. Models are told apart by identity: there is one object for each. */
    record Key(int model, Condition condition, Availability availability, Set<ItemId> bundled) {}

    /** The variety of the unit. */
    Variety(Index index, Unit like) {
        this.like = like;
        this.start = index.capabilities().stream()
                .mapToLong(of -> index.measures().start(like, of))
                .toArray();
        var assortment = new Assortment(index.catalogue(), like, Needs.NONE);
        List<Item> items = index.items();
        this.cents = new long[items.size()];
        for (int i = 0; i < cents.length; i++) {
            Item item = items.get(i);
            cents[i] = assortment.refusal(item).isPresent()
                    ? NOT_TO_BE_HAD
                    : assortment.findPrice(item).orElseThrow().middle().cents();
        }
    }

    /** A unit of the variety. */
    Unit like() {
        return like;
    }

    Model model() {
        return like.model();
    }

    /** What its units start with of a capability, by its number, before any feature is counted, in steps. */
    long start(int capability) {
        return start[capability];
    }

    /** Whether the item, by its place in the catalogue, can be had by a shopper who does not own it. */
    boolean has(int item) {
        return cents[item] != NOT_TO_BE_HAD;
    }

    /** Middle price of one, where it can be had. */
    long cents(int item) {
        return cents[item];
    }

    /** Whether the item comes with its units. */
    boolean bundles(Item item) {
        return like.bundled().contains(item.id());
    }
}
