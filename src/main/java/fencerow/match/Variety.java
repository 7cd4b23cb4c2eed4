package fencerow.match;

import fencerow.needs.Needs;
import fencerow.stock.Availability;
import fencerow.stock.Condition;
import fencerow.stock.Item;
import fencerow.stock.Model;
import fencerow.stock.Unit;
import fencerow.terms.ItemId;
import fencerow.terms.PriceRange;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/**
 * Units of one variety, that is of one model, condition, availability and bundle: what they start with and what can be
 * had for them, whoever asks. Immutable.
 */
final class Variety {
    private final Unit like;
    private final long[] start;
    private final List<Optional<PriceRange>> prices;

    /** What makes units one variety. Models are told apart by identity: there is one object for each. */
    record Key(int model, Condition condition, Availability availability, Set<ItemId> bundled) {}

    /** The variety of the unit. */
    Variety(Index index, Unit like) {
        this.like = like;
        this.start = index.capabilities().stream()
                .mapToLong(of -> index.measures().start(like, of))
                .toArray();
        var assortment = new Assortment(index.catalogue(), like, Needs.NONE);
        this.prices = index.items().stream()
                .map(item -> assortment.refusal(item).isPresent()
                        ? Optional.<PriceRange>empty()
                        : assortment.findPrice(item))
                .toList();
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
        return prices.get(item).isPresent();
    }

    /** Price of one, where it can be had. */
    PriceRange price(int item) {
        return prices.get(item).orElseThrow();
    }

    /** Whether the item comes with its units. */
    boolean bundles(Item item) {
        return like.bundled().contains(item.id());
    }
}
