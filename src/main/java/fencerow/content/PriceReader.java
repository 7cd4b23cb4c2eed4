package fencerow.content;

import fencerow.stock.Item;
import fencerow.stock.PriceBook;
import fencerow.stock.PriceBook.ItemPrice;
import fencerow.terms.ItemId;
import fencerow.terms.MachineClass;
import fencerow.terms.Money;
import fencerow.terms.PriceRange;
import java.util.Arrays;
import java.util.Collection;
import java.util.EnumMap;
import java.util.EnumSet;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Reads {@code prices.csv}, and sees that whatever can be bought has a price. */
final class PriceReader {
    private static final List<String> COLUMNS =
            List.of("item", "class", "order-low", "order-high", "later-low", "later-high");

    private final Ids ids;
    private final Map<String, Item> items;
    private final Map<ItemId, Map<MachineClass, ItemPrice>> prices = new HashMap<>();

    PriceReader(Ids ids, Map<String, Item> items) {
        this.ids = ids;
        this.items = items;
    }

    PriceBook read(SourceFile file, Problems problems) {
        CsvFile.Table table = CsvFile.read(file, COLUMNS, column -> false, COLUMNS, problems);
        table.rows().forEach(this::readRow);
        if (table.complete()) {
            checkAllPriced(problems);
        }
        return new PriceBook(prices);
    }

    private void readRow(CsvRow row) {
        String id = row.text("item");
        Optional<PriceRange> order = range(row, "order");
        Optional<PriceRange> later = range(row, "later");
        boolean known =
                ids.require(id, row.place(), Kind.ADD_ON, Kind.ATTACHMENT, Kind.CONDITION);
        Optional<String> className = row.find("class");
        Optional<MachineClass> named = className.flatMap(PriceReader::classOf);
        if (className.isPresent() && named.isEmpty()) {
            row.error("class", "[" + className.get() + "] is no machine class", "use "
                    + String.join(", ", Arrays.stream(MachineClass.values()).map(MachineClass::id).toList())
                    + ", or leave it empty for all");
        } else if (known) {
            enter(row, new ItemId(id), named, new ItemPrice(order, later));
        }
    }

    private void enter(CsvRow row, ItemId id, Optional<MachineClass> named, ItemPrice price) {
        Set<MachineClass> sold = Optional.ofNullable(items.get(id.value()))
                .map(Item::classes)
                .orElse(EnumSet.allOf(MachineClass.class));
        if (named.isPresent() && !sold.contains(named.get())) {
            row.warning("class", "[" + id + "] is not made for [" + named.get().id() + "]", "delete the row");
        }
        Map<MachineClass, ItemPrice> byClass = prices.computeIfAbsent(id, i -> new EnumMap<>(MachineClass.class));
        for (MachineClass each : named.map(Set::of).orElse(sold)) {
            if (byClass.put(each, price) != null) {
                row.error("class", "[" + id + "] has a price for [" + each.id() + "] already", "delete one row");
            }
        }
    }

    private static Optional<MachineClass> classOf(String word) {
        return Arrays.stream(MachineClass.values()).filter(each -> each.id().equals(word)).findFirst();
    }

    /** The price in a pair of columns; a pair left empty means that it cannot be had then. */
    static Optional<PriceRange> range(CsvRow row, String when) {
        String prefix = when.isEmpty() ? "" : when + "-";
        int before = row.problems().count();
        Optional<Money> low = row.findDollars(prefix + "low");
        Optional<Money> high = row.findDollars(prefix + "high");
        if (row.problems().count() > before) {
            return Optional.empty();
        }
        if (low.isPresent() != high.isPresent()) {
            row.error(prefix + (low.isPresent() ? "high" : "low"), "the cell is empty and its pair is not",
                    "fill in both or neither");
            return Optional.empty();
        }
        if (low.isPresent() && high.isPresent() && low.get().compareTo(high.get()) > 0) {
            row.error(prefix + "low", "the low price is above the high one", "swap them");
            return Optional.empty();
        }
        return low.flatMap(l -> high.map(h -> new PriceRange(l, h)));
    }

    private void checkAllPriced(Problems problems) {
        for (Item item : items.values()) {
            Collection<ItemPrice> found = prices.getOrDefault(item.id(), Map.of()).entrySet().stream()
                    .filter(entry -> item.classes().contains(entry.getKey()))
                    .map(Map.Entry::getValue)
                    .filter(price -> price.order().isPresent() || price.later().isPresent())
                    .toList();
            if (found.isEmpty()) {
                problems.error(place(item), "[" + item.id() + "] has no price for any class it is made for",
                        "add a row to prices.csv");
            }
        }
        for (String note : ids.all(Kind.CONDITION)) {
            for (MachineClass each : MachineClass.values()) {
                Optional<ItemPrice> price =
                        Optional.ofNullable(prices.getOrDefault(new ItemId(note), Map.of()).get(each));
                if (price.flatMap(ItemPrice::later).isEmpty()) {
                    problems.error(ids.placeOf(Kind.CONDITION, note),
                            "the note [" + note + "] has no later price for [" + each.id() + "]",
                            "add a row to prices.csv");
                }
            }
        }
    }

    private Place place(Item item) {
        return ids.find(Kind.ADD_ON, item.id().value())
                .orElseGet(() -> ids.placeOf(Kind.ATTACHMENT, item.id().value()));
    }
}
