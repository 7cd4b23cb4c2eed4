package fencerow.sizing;

import fencerow.terms.Spread;
import fencerow.terms.Volume;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * How much liquid a tire takes at 75 % fill, valve at the top.
 *
 * <p>Charted sizes: {@link Source#TIRE_VOLUME_CHART}, within 8 %. Others: {@link Source#TIRE_GEOMETRY}, within 15 %,
 * and low for wide turf tires on narrow rims: ask the tire shop.
 *
 * @param label     as on the sidewall, {@code 11.2-24}
 * @param fill      at 75 %
 * @param estimated whether the figure is an estimate
 * @param source    where it comes from
 */
public record TireSize(String label, Volume fill, boolean estimated, Source source) {
    private static final List<TireSize> ALL = all(
            List.of(
                    charted("7.2-24", 9), charted("8.3-24", 13), charted("9.5-16", 12), charted("9.5-24", 17),
                    charted("10-16.5", 12), charted("11L-15", 13), charted("11.2-24", 24), charted("11.2-28", 27),
                    charted("12.4-16", 21), charted("12.4-24", 30), charted("12.4-28", 35), charted("13.6-24", 38),
                    charted("13.6-26", 40), charted("13.6-28", 43), charted("14L-16.1", 27), charted("14.9-24", 47),
                    charted("14.9-26", 48), charted("14.9-28", 53), charted("16.5L-16.1", 42), charted("16.9-24", 61),
                    charted("16.9-28", 69), charted("17.5L-24", 55), charted("19.5L-24", 73)),
            List.of(
                    estimated("23x8.50-12", 5.2), estimated("26x12.00-12", 10), estimated("27x8.50-15", 6.8),
                    estimated("27x10.50-15", 8.5), estimated("29x12.50-15", 12), estimated("31x15.50-15", 18),
                    estimated("7-16", 6.7), estimated("8-16", 8.7), estimated("11.2-16", 18),
                    estimated("13.6-16", 28), estimated("41x14-20", 29), estimated("43x16.00-20", 37),
                    estimated("44x18-20", 44), estimated("15-19.5", 29), estimated("12-16.5", 16)));

    /** Every size, charted ones first. */
    public static List<TireSize> all() {
        return ALL;
    }

    /** The size with this label. */
    public static Optional<TireSize> find(String label) {
        return ALL.stream().filter(size -> size.label.equals(label)).findFirst();
    }

    /** The fill with its honest accuracy: 8 % either way where charted, 15 % where estimated. */
    public Spread<Volume> fillRange() {
        double share = estimated ? 0.15 : 0.08;
        return Spread.of(new Volume(fill.si() * (1 - share)), new Volume(fill.si() * (1 + share)));
    }

    private static TireSize charted(String label, double gallons) {
        return new TireSize(label, Volume.ofUsGallons(gallons), false, Source.TIRE_VOLUME_CHART);
    }

    private static TireSize estimated(String label, double gallons) {
        return new TireSize(label, Volume.ofUsGallons(gallons), true, Source.TIRE_GEOMETRY);
    }

    private static List<TireSize> all(List<TireSize> charted, List<TireSize> estimated) {
        List<TireSize> both = new ArrayList<>(charted);
        both.addAll(estimated);
        return List.copyOf(both);
    }
}
