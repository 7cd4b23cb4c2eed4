package fencerow.wording;

import fencerow.terms.Amount;
import fencerow.terms.Spread;
import fencerow.terms.UnitOfMeasure;
import java.util.ArrayList;
import java.util.List;

/** Round amounts along an axis, in the shopper's own units. */
public final class Ticks {
    private static final double SLACK = 1e-6;

    private Ticks() {}

    /** A round amount, and how it is written: in the unit of the axis' far end. */
    public record Tick(Amount at, String words) {}

    /**
     * The round amounts within a range.
     *
     * @param range  what the axis shows
     * @param most   how many there may be, at least 2
     * @param shown  in whose units they are round
     */
    public static List<Tick> of(Spread<Amount> range, int most, Quantities shown) {
        UnitOfMeasure unit = ShownUnit.of(range.high(), shown.metric());
        double low = TradeUnits.fromSi(unit, range.low().si());
        double high = TradeUnits.fromSi(unit, range.high().si());
        double step = atLeast((high - low) / (most - 1));
        List<Tick> ticks = new ArrayList<>();
        for (double at = Math.ceil(low / step - SLACK) * step; at <= high + step * SLACK; at += step) {
            var amount = new Amount(range.low().dimension(), TradeUnits.toSi(unit, at));
            ticks.add(new Tick(amount, shown.show(amount, unit)));
        }
        return ticks;
    }

    /** The smallest of 1, 2, 5 times a power of ten that is not below. */
    private static double atLeast(double step) {
        double power = Math.pow(10, Math.floor(Math.log10(step) + SLACK));
        double share = step / power - SLACK;
        return (share <= 1 ? 1 : share <= 2 ? 2 : share <= 5 ? 5 : 10) * power;
    }
}
