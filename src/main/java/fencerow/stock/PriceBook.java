package fencerow.stock;

import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import fencerow.terms.PriceRange;
import java.util.Map;
import java.util.Optional;

/**
 * The showroom's prices of add-ons, attachments and catch-up work, installed.
 *
 * @param prices by item, then by class; an item priced alike for all classes has all of them
 */
public record PriceBook(Map<ItemId, Map<MachineClass, ItemPrice>> prices) {
    /** Copies the map. */
    public PriceBook {
        prices = Map.copyOf(prices);
    }

    /**
     * What one item costs.
     *
     * @param order when chosen as the tractor is ordered; empty where it cannot be
     * @param later bought or fitted afterwards; empty where it cannot be
     */
    public record ItemPrice(Optional<PriceRange> order, Optional<PriceRange> later) {}

    /** The item's price on the class. */
    public Optional<ItemPrice> findPrice(ItemId item, MachineClass machineClass) {
        return Optional.ofNullable(prices.getOrDefault(item, Map.of()).get(machineClass));
    }

    /** What the item costs bought today for a tractor of the class. */
    public Optional<PriceRange> findLater(ItemId item, MachineClass machineClass) {
        return findPrice(item, machineClass).flatMap(ItemPrice::later);
    }
}
